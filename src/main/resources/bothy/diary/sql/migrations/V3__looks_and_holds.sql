-- When to look at a garden next, whether something should be said unasked; null for not at all.
alter table grower add column look_ms bigint;
create index grower_look on grower (look_ms) where look_ms is not null;
update grower set look_ms = 0 where last_line > 0;

-- Who of several processes on one database has a letter or a reply at hand, and until when nobody else takes it up.
alter table inbox add column held_by text;
alter table inbox add column held_until_ms bigint not null default 0;
create index inbox_waiting_chat on inbox (channel, chat, number) where handled_ms is null;
alter table outbox add column held_by text;
alter table outbox add column held_until_ms bigint not null default 0;

-- What is old and done is removed by its age.
create index inbox_done on inbox (handled_ms) where handled_ms is not null;
create index outbox_done on outbox (at_ms) where outcome is not null;
create index handled_age on handled (at_ms);
create index inbox_held on inbox (held_by) where held_by is not null and handled_ms is null;
create index outbox_held on outbox (held_by) where held_by is not null and outcome is null;
