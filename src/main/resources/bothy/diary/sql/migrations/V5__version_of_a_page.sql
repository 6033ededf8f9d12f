-- Rises with each write of a grower's page: what was reckoned on an older one is not kept.
alter table grower add column version bigint not null default 0;
