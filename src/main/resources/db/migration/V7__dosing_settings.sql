-- What the clinic changed of the dosing rule; what is not here stands at its default.
create table dosing_setting (
    code varchar(80) primary key,
    amount double precision not null,
    set_by varchar(120) not null,
    set_at timestamp with time zone not null
);
