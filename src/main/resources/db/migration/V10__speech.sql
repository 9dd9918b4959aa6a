-- How a household is spoken to: language and words, units of distance, clinic or vet.
alter table household add column speech varchar(20) default 'en-GB' not null;
alter table household add column units varchar(10) default 'km' not null;
alter table household add column says_vet boolean default false not null;
-- The language that the chat program itself is set to: a first guess, never more.
alter table chat add column language varchar(20);
