package bothy;
final class ReadVerb {}
