package measuredwalk.diary;

import java.util.List;

import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkFacts;
import org.jspecify.annotations.Nullable;

/**
 * One row of a diary with what was read from it.
 *
 * @param number its place among the rows, from 1
 * @param date the day as it was written
 * @param said the words as they were written
 * @param walks the walks that it tells of
 * @param morning the morning that it tells of, or null
 * @param standing what becomes of it
 * @param remark why it is not stored, or what to look at; may be empty
 */
public record DiaryLine(int number, String date, String said, List<WalkFacts> walks, @Nullable MorningFacts morning,
		Standing standing, String remark) {

	public DiaryLine {
		walks = List.copyOf(walks);
	}

	/** What becomes of a row. */
	public enum Standing {

		/** It is stored when the diary is. */
		READ,
		/** The journal has it already. */
		KNOWN,
		/** Nothing of use was found, or it is wrong. */
		NOT_READ

	}

	static DiaryLine notRead(DiaryRow row, String why) {
		return new DiaryLine(row.number(), row.fields().getOrDefault("date", ""), row.said(), List.of(), null,
				Standing.NOT_READ, why);
	}

}
