package measuredwalk.clinic.audit;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A line of CSV (RFC 4180) that a spreadsheet takes as text and figures only: a cell that
 * it would take for a formula is marked as text by an apostrophe (OWASP, CSV injection).
 */
final class CsvLine {

	private static final String BEGINS_A_FORMULA = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";

	private static final String NUMBER = "-?\\d+(\\.\\d+)?";

	private CsvLine() {
	}

	static String of(List<String> cells) {
		return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",")) + "\r\n";
	}

	private static String cell(String text) {
		String safe = (beginsAFormula(text) && !text.matches(NUMBER)) ? "'" + text : text;
		boolean quoted = safe.chars()
			.anyMatch((letter) -> letter == ',' || letter == '"' || letter == ';' || letter == '\''
					|| Character.isISOControl(letter));
		return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
	}

	/** Spreadsheets skip blanks before they look. */
	private static boolean beginsAFormula(String text) {
		return !text.isEmpty() && (BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0
				|| !text.isBlank() && BEGINS_A_FORMULA.indexOf(text.strip().charAt(0)) >= 0);
	}

}
