package measuredwalk.files;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class CsvTableTests {

	/** The openings that OWASP names under CSV injection. */
	@ParameterizedTest
	@ValueSource(strings = { "=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "\uff1d1" })
	void whatASpreadsheetWouldTakeForAFormulaIsText(String cell) {
		assertThat(row(cell)).startsWith("\"'" + cell.charAt(0));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`',
			value = { "Thistle|\"Thistle\"", "12|12", "-3.5|-3.5", "a,b|\"a,b\"", "a;=1|\"a;=1\"", "0012|\"0012\"",
					"say \"no\"|\"say \"\"no\"\"\"", "O'Malley|\"O'Malley\"", "``|\"\"" })
	void otherCellsStandAsTheyAre(String cell, String written) {
		assertThat(row(cell)).isEqualTo(written + "\r\n");
	}

	@Test
	void aQuotedFormulaCannotCloseItsCell() {
		assertThat(row("\",=1+1")).isEqualTo("\"\"\",=1+1\"\r\n");
	}

	private static String row(String cell) {
		String table = CsvTable.of(List.of("head"), List.of(List.of(cell)));
		assertThat(table).startsWith("\"head\"\r\n");
		return table.substring("\"head\"\r\n".length());
	}

}
