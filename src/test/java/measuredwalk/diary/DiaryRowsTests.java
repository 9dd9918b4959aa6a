package measuredwalk.diary;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class DiaryRowsTests {

	@Test
	void quotedTextsMayHoldCommasQuotesAndLineBreaks() {
		// RFC 4180, section 2, rules 6 and 7.
		DiaryRow row = DiaryRows.read("date,said\r\n2026-03-14,\"slow, \"\"stiff\"\"\r\nand sore\"\r\n").get(0);
		assertThat(row.said()).isEqualTo("slow, \"stiff\"\r\nand sore");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			value = { "2026-03-14 | 2026-03-14", "14/3/2026 | 2026-03-14", "1.12.2025 | 2025-12-01" })
	void datesAreIsoOrDayFirst(String written, String expected) {
		assertThat(DiaryRows.read("Date;Said\n" + written + ";fine\n").get(0).date()).hasToString(expected);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "3/14/2026 | with the day first", "31/2/2026 | with the day first",
			"last Tuesday | with the day first" })
	void otherDatesAreRefusedWithTheFix(String written, String complaint) {
		DiaryRow row = DiaryRows.read("date\n" + written + "\n").get(0);
		assertThatExceptionOfType(DiaryProblem.class).isThrownBy(row::date).withMessageContaining(complaint);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = { "when,said | 'date' is missing",
			"[{\"date\": | begins like JSON", "~date,said\n\"2026-03-14,open~ | Put quotes round texts" })
	void aDiaryThatCannotBeTakenApartIsRefusedWithTheFix(String text, String complaint) {
		assertThatExceptionOfType(DiaryProblem.class).isThrownBy(() -> DiaryRows.read(text))
			.withMessageContaining(complaint);
	}

	@Test
	void jsonGivesTheSameRowsAsCsv() {
		assertThat(DiaryRows.read("[{\"date\":\"2026-03-14\",\"minutes\":20,\"said\":\"slow\",\"mood\":\"blue\"}]"))
			.isEqualTo(DiaryRows.read("date,minutes,said,mood\n2026-03-14,20,slow,blue\n"));
	}

}
