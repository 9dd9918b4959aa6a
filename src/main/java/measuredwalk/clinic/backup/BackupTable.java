package measuredwalk.clinic.backup;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as a backup sees it. Every value travels as text, and the database itself turns
 * it into the column's type, so that what one kind of database wrote the other can read.
 *
 * @param name its name
 * @param columns its columns, in their order
 */
record BackupTable(String name, List<Column> columns) {

	/**
	 * A column.
	 *
	 * @param name its name
	 * @param type the SQL standard's name of its type, in lower case
	 * @param identity whether the database numbers its rows by it
	 */
	record Column(String name, String type, boolean identity) {

		/** Bytes have no text that both kinds of database share. */
		boolean bytes() {
			return this.type.equals("bytea") || this.type.equals("binary varying");
		}

		String asText() {
			return bytes() ? this.name : "cast(" + this.name + " as varchar)";
		}

		String fromText() {
			return bytes() ? "?" : "cast(? as " + this.type + ")";
		}

	}

	List<String> columnNames() {
		return this.columns.stream().map(Column::name).toList();
	}

	/** The same table with its columns in another order. */
	BackupTable inOrderOf(List<String> names) {
		List<Column> ordered = names.stream()
			.map((name) -> this.columns.stream()
				.filter((column) -> column.name().equals(name))
				.findFirst()
				.orElseThrow(() -> new RestoreProblem("It has the column '" + name + "' of the table '" + this.name
						+ "', which this version of the program does not know.")))
			.toList();
		return new BackupTable(this.name, ordered);
	}

	String select() {
		return "select " + joined(this.columns.stream().map(Column::asText).toList()) + " from " + this.name;
	}

	String insert() {
		return "insert into " + this.name + " (" + joined(columnNames()) + ") values ("
				+ joined(this.columns.stream().map(Column::fromText).toList()) + ")";
	}

	private static String joined(List<String> parts) {
		return parts.stream().collect(Collectors.joining(", "));
	}

}
