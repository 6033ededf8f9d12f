-- Runs on SQLite and on PostgreSQL; ${rising_number} is what each calls a key that rises by itself.
-- Instants are whole milliseconds since 1970-01-01T00:00:00Z.

create table grower (
    grower    text   not null primary key,
    last_line bigint not null default 0,
    state     text
);

-- Append-only: no statement of the program updates a line.
create table diary_line (
    grower  text   not null references grower (grower),
    number  bigint not null,
    message text   not null,
    at_ms   bigint not null,
    entry   text   not null,
    primary key (grower, number)
);

create table handled (
    grower  text   not null references grower (grower),
    message text   not null,
    at_ms   bigint not null,
    primary key (grower, message)
);

create table inbox (
    number     ${rising_number},
    channel    text   not null,
    id         text   not null,
    grower     text   not null,
    chat       text   not null,
    at_ms      bigint not null,
    body       text   not null,
    handled_ms bigint,
    unique (channel, id)
);
create index inbox_waiting on inbox (channel, number) where handled_ms is null;
create index inbox_grower on inbox (grower, id);

-- outcome: null while it waits, 'sent' or 'given-up'.
create table outbox (
    number          ${rising_number},
    channel         text    not null,
    chat            text    not null,
    grower          text    not null,
    at_ms           bigint  not null,
    reply           text    not null,
    buttons         integer not null,
    tries           integer not null default 0,
    not_before_ms   bigint  not null default 0,
    why             text,
    outcome         text,
    channel_message text
);
create index outbox_waiting on outbox (channel, number) where outcome is null;
create index outbox_waiting_chat on outbox (channel, chat, number) where outcome is null;
create index outbox_buttons on outbox (channel, chat, number) where buttons > 0;
create index outbox_grower on outbox (grower);
