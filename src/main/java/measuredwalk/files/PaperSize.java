package measuredwalk.files;

/** What a page is printed on. Its sizes in millimetres: ISO 216, ANSI/ASME Y14.1. */
public enum PaperSize {

	/** ISO A4. */
	A4(210, 297),
	/** US letter. */
	LETTER(215.9f, 279.4f);

	private final float widthMillimetres;

	private final float heightMillimetres;

	PaperSize(float widthMillimetres, float heightMillimetres) {
		this.widthMillimetres = widthMillimetres;
		this.heightMillimetres = heightMillimetres;
	}

	/**
	 * How wide it is.
	 * @return in millimetres
	 */
	public float widthMillimetres() {
		return this.widthMillimetres;
	}

	/**
	 * How high it is.
	 * @return in millimetres
	 */
	public float heightMillimetres() {
		return this.heightMillimetres;
	}

}
