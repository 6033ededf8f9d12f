package bothy.advice.reckoned;

/** A size or number told with a question lies outside of what can be reckoned. */
public record NotReckoned(String planting) {}
