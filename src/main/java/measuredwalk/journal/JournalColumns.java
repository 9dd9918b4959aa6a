package measuredwalk.journal;

import java.util.List;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import measuredwalk.signs.Sign;
import org.hibernate.annotations.Immutable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * Lists that stand in one column each, as JSON: a version of an entry is written once,
 * read whole, and never searched by one of its signs. The lists are never changed, so
 * that Hibernate need not copy them to see whether they were.
 */
final class JournalColumns {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private JournalColumns() {
	}

	@Converter
	@Immutable
	static class Signs implements AttributeConverter<List<Sign>, String> {

		@Override
		public String convertToDatabaseColumn(List<Sign> signs) {
			return JSON.writeValueAsString(signs);
		}

		@Override
		public List<Sign> convertToEntityAttribute(String column) {
			return JSON.readValue(column, new TypeReference<List<Sign>>() {
			});
		}

	}

	@Converter
	@Immutable
	static class Words implements AttributeConverter<List<Said>, String> {

		@Override
		public String convertToDatabaseColumn(List<Said> said) {
			return JSON.writeValueAsString(said);
		}

		@Override
		public List<Said> convertToEntityAttribute(String column) {
			return JSON.readValue(column, new TypeReference<List<Said>>() {
			});
		}

	}

	@Converter
	@Immutable
	static class Paths implements AttributeConverter<List<String>, String> {

		@Override
		public String convertToDatabaseColumn(List<String> paths) {
			return String.join(",", paths);
		}

		@Override
		public List<String> convertToEntityAttribute(String column) {
			return column.isEmpty() ? List.of() : List.of(column.split(","));
		}

	}

}
