package measuredwalk.clinic.access;

/**
 * What a member of staff may do. All may see dogs and alerts, take on dogs, and change
 * plans and medicines.
 */
public enum StaffRole {

	/** May also change the clinic's settings and erase dogs. */
	VET,
	/** May neither change settings nor erase. */
	NURSE,
	/** May do everything, and alone makes accounts and reads the record of access. */
	ADMIN;

	/**
	 * The role in words.
	 * @return the word
	 */
	public String shown() {
		return switch (this) {
			case VET -> "vet";
			case NURSE -> "nurse";
			case ADMIN -> "administrator";
		};
	}

}
