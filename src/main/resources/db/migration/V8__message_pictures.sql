-- A message may show a picture. Only its name is kept, so that it is drawn from what the journal says by then.
alter table outbox_message add column picture varchar(100);
alter table outbox_message add column picture_words varchar(400);
