package measuredwalk.journal;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import measuredwalk.signs.Coded;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Sign;
import org.hibernate.annotations.Immutable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.ObjectReader;
import tools.jackson.databind.json.JsonMapper;

/**
 * Lists that stand in one column each, as JSON: a version of an entry is written once,
 * read whole, and never searched by one of its signs. The lists are never changed, so
 * that Hibernate need not copy them to see whether they were.
 */
final class JournalColumns {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private static final ObjectReader SIGNS = JSON.readerFor(new TypeReference<List<Sign>>() {
	});

	private static final ObjectReader SAID = JSON.readerFor(new TypeReference<List<Said>>() {
	});

	private static final String NONE = "[]";

	private JournalColumns() {
	}

	static List<Sign> signs(String column) {
		return column.equals(NONE) ? List.of() : SIGNS.readValue(column);
	}

	static List<Said> said(String column) {
		return column.equals(NONE) ? List.of() : SAID.readValue(column);
	}

	static List<String> paths(String column) {
		return column.isEmpty() ? List.of() : List.of(column.split(","));
	}

	static Set<LoadKind> loads(String column) {
		return column.isEmpty() ? Set.of()
				: Arrays.stream(column.split(","))
					.map((code) -> Coded.of(LoadKind.class, code))
					.collect(Collectors.toUnmodifiableSet());
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
			return signs(column);
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
			return said(column);
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
			return paths(column);
		}

	}

	@Converter
	static class Loads implements AttributeConverter<Set<LoadKind>, String> {

		@Override
		public String convertToDatabaseColumn(Set<LoadKind> loads) {
			return loads.stream().map(LoadKind::code).collect(Collectors.joining(","));
		}

		@Override
		public Set<LoadKind> convertToEntityAttribute(String column) {
			return loads(column);
		}

	}

}
