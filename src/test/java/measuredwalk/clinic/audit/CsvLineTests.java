package measuredwalk.clinic.audit;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class CsvLineTests {

	/** The openings that OWASP names under CSV injection. */
	@ParameterizedTest
	@ValueSource(strings = { "=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "  =1", "\uff1d1" })
	void whatASpreadsheetWouldTakeForAFormulaIsText(String cell) {
		assertThat(CsvLine.of(List.of(cell))).startsWith("\"'" + cell.charAt(0));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = { "Thistle|Thistle", "12|12", "-3.5|-3.5", "a,b|\"a,b\"",
			"say \"no\"|\"say \"\"no\"\"\"", "O'Malley|\"O'Malley\"", "``|``" })
	void otherCellsStandAsTheyAre(String cell, String written) {
		assertThat(CsvLine.of(List.of(cell))).isEqualTo(written + "\r\n");
	}

	@Test
	void aQuotedFormulaCannotCloseItsCell() {
		assertThat(CsvLine.of(List.of("\",=1+1", "x"))).isEqualTo("\"\"\",=1+1\",x\r\n");
	}

}
