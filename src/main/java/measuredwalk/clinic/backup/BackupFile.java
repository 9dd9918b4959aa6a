package measuredwalk.clinic.backup;

import java.time.Instant;
import java.util.List;

import tools.jackson.databind.json.JsonMapper;

/**
 * The shape of a backup: a zip that begins with what it is, and has a file of JSON Lines
 * for each table: first the names of the columns, then one row a line.
 */
final class BackupFile {

	static final JsonMapper JSON = JsonMapper.shared();

	static final String CONTENTS = "backup.json";

	static final String ROWS = ".jsonl";

	private BackupFile() {
	}

	/**
	 * What a backup says of itself.
	 *
	 * @param schemaVersion the version of the tables that it was taken from
	 * @param takenAt when
	 * @param tables the names of its tables, in the order in which they are filled
	 */
	record Contents(String schemaVersion, Instant takenAt, List<String> tables) {
	}

}
