-- A household's codes go with it; without this each one that is erased reads all codes.
create index join_code_of_household on join_code (household_id);
