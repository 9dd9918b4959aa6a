-- What each dog adds to the audit of the caseload, counted when its day begins. It can be emptied at any time.
create table dog_audit (
    dog_id uuid primary key references dog on delete cascade,
    days integer not null,
    walks integer not null,
    walks_in_band integer not null,
    flares integer not null,
    mornings_answered integer not null,
    mornings_expected integer not null
);
