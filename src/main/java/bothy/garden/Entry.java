package bothy.garden;

/** One thing that the diary keeps. Entries are never changed: what was wrong is answered by an {@link Amendment}. */
public sealed interface Entry permits Event, SignSeen, Finding, SettingChange, Amendment {}
