package measuredwalk.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

/**
 * A table as CSV (RFC 4180) that a spreadsheet takes as text and figures only: a cell
 * that it would take for a formula is marked as text by an apostrophe (OWASP, CSV
 * injection). Every text is quoted, as some spreadsheets part cells at other signs than
 * commas.
 */
public final class CsvTable {

	private static final String BEGINS_A_FORMULA = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";

	private static final String NUMBER = "-?(?:0|[1-9]\\d{0,14})(?:\\.\\d{1,15})?";

	private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setQuoteMode(QuoteMode.NON_NUMERIC).build();

	private CsvTable() {
	}

	/**
	 * Writes a table.
	 * @param head the names of the columns
	 * @param rows the rows, each as long as the head; figures stand bare
	 * @return the table
	 */
	public static String of(List<String> head, List<List<String>> rows) {
		StringBuilder table = new StringBuilder();
		try (CSVPrinter printer = new CSVPrinter(table, FORMAT)) {
			printer.printRecord(head);
			for (List<String> row : rows) {
				printer.printRecord(row.stream().map(CsvTable::cell));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException("A table could not be written.", ex);
		}
		return table.toString();
	}

	private static Object cell(String text) {
		if (text.matches(NUMBER)) {
			return new BigDecimal(text);
		}
		return beginsAFormula(text) ? "'" + text : text;
	}

	/** Spreadsheets skip blanks before they look. */
	private static boolean beginsAFormula(String text) {
		return !text.isEmpty() && (BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0
				|| !text.isBlank() && BEGINS_A_FORMULA.indexOf(text.strip().charAt(0)) >= 0);
	}

}
