-- When a reply was put off, by the clock of then: where the clock was set back since, the moment until which it waits means nothing.
alter table outbox add column put_off_ms bigint not null default 0;
