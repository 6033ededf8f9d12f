-- Weather of past days at a grower's place, so that the water of a planting can be reckoned through a restart.
-- place: latitude and longitude to a hundredth of a degree; the days of another place do not count.

create table weather_day (
    grower      text not null references grower (grower),
    place       text not null,
    day         text not null,
    tmin        double precision,
    tmax        double precision,
    rain        double precision,
    humid_hours double precision,
    wind_ms     double precision,
    primary key (grower, place, day)
);
