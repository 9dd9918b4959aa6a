package measuredwalk.clinic.pages;

/** What a report is printed on. Its sizes in millimetres: ISO 216, ANSI/ASME Y14.1. */
enum PaperSize {

	A4(210, 297), LETTER(215.9f, 279.4f);

	private final float widthMillimetres;

	private final float heightMillimetres;

	PaperSize(float widthMillimetres, float heightMillimetres) {
		this.widthMillimetres = widthMillimetres;
		this.heightMillimetres = heightMillimetres;
	}

	float widthMillimetres() {
		return this.widthMillimetres;
	}

	float heightMillimetres() {
		return this.heightMillimetres;
	}

}
