package measuredwalk.diary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Takes a diary apart into rows: CSV (RFC 4180) with a first line of names, or JSON. */
final class DiaryRows {

	/** Some years of two walks a day. */
	private static final int MOST_ROWS = 5000;

	private static final String NAMES = String.join(", ", DiaryRow.FIELDS);

	private static final CSVFormat CSV = CSVFormat.RFC4180.builder()
		.setHeader()
		.setSkipHeaderRecord(true)
		.setIgnoreHeaderCase(true)
		.setTrim(true)
		.setIgnoreEmptyLines(true)
		.setAllowMissingColumnNames(true)
		.build();

	private DiaryRows() {
	}

	static List<DiaryRow> read(String text) {
		String content = text.startsWith("\uFEFF") ? text.substring(1) : text;
		if (content.isBlank()) {
			throw new DiaryProblem("There is nothing in it. The first line names the columns: " + NAMES + ".");
		}
		List<DiaryRow> rows = (content.stripLeading().charAt(0) == '[') ? json(content) : csv(content);
		if (rows.size() > MOST_ROWS) {
			throw new DiaryProblem("That is more than " + MOST_ROWS + " rows; send it in parts.");
		}
		return rows;
	}

	private static List<DiaryRow> csv(String content) {
		char separator = separator(content);
		try (CSVParser parser = CSVParser.parse(content, CSV.builder().setDelimiter(separator).build())) {
			if (parser.getHeaderNames().stream().noneMatch((name) -> name.strip().equalsIgnoreCase("date"))) {
				throw new DiaryProblem("The first line must name the columns: " + NAMES + ". 'date' is missing there.");
			}
			List<DiaryRow> rows = new ArrayList<>();
			for (CSVRecord record : parser) {
				Map<String, String> fields = new HashMap<>();
				record.toMap().forEach((name, value) -> put(fields, name, value));
				rows.add(new DiaryRow(rows.size() + 1, fields));
			}
			return rows;
		}
		catch (IOException | UncheckedIOException | IllegalArgumentException ex) {
			throw new DiaryProblem("It is not CSV as expected: " + ex.getMessage() + ". Put quotes round texts"
					+ " that hold a comma, a quote or a line break.");
		}
	}

	/** Where the comma is for decimals, tables are written with semicolons. */
	private static char separator(String content) {
		String first = content.lines().findFirst().orElse("");
		return (first.indexOf(';') >= 0 && first.indexOf(',') < 0) ? ';' : ',';
	}

	private static List<DiaryRow> json(String content) {
		try {
			List<DiaryRow> rows = new ArrayList<>();
			for (JsonNode entry : JsonMapper.shared().readTree(content)) {
				Map<String, String> fields = new HashMap<>();
				entry.properties().forEach((field) -> put(fields, field.getKey(), field.getValue().asString("")));
				rows.add(new DiaryRow(rows.size() + 1, fields));
			}
			return rows;
		}
		catch (JacksonException ex) {
			throw new DiaryProblem("It begins like JSON but is not: " + ex.getOriginalMessage()
					+ ". Send a list of objects with " + NAMES + ".");
		}
	}

	private static void put(Map<String, String> fields, String name, String value) {
		String known = name.strip().toLowerCase(Locale.ROOT);
		if (DiaryRow.FIELDS.contains(known) && value != null && !value.isBlank()) {
			fields.put(known, value.strip());
		}
	}

}
