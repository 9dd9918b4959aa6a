-- What made a walk harder than the dog's usual one, as codes with commas; empty for a walk of the usual load.
alter table walk_entry add column loads varchar(200) default '' not null;
