-- Whether a household wants the picture of the fortnight that comes on Sundays.
alter table household add column fortnight_picture boolean default true not null;

-- A message may bring a file. Only its name is kept, so that it is made from what the journal says by then;
-- and what is said instead when it cannot be made.
alter table outbox_message add column document varchar(100);
alter table outbox_message add column document_instead varchar(400);
