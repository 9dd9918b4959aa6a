package measuredwalk.clinic;

/** What a member of staff may do. */
enum StaffRole {

	VET, NURSE, ADMIN

}
