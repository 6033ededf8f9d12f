-- What is normal at a grower's place by a station's record: frosts by their chances, rain, temperatures and degree days by month, as JSON.
-- place: as for weather_day; empty when no place was told.

create table normals (
    grower text not null references grower (grower),
    place  text not null,
    kept   text not null,
    primary key (grower, place)
);
