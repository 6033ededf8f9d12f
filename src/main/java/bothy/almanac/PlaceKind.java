package bothy.almanac;

/** Kinds of places that a planting can stand in. */
public enum PlaceKind {
    INDOORS,
    UNDER_GLASS,
    OUTDOORS
}
