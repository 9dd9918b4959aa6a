package measuredwalk.escalation;

import java.util.List;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Evidence stands in one column, as JSON: it is written and read whole. */
@Converter
class EvidenceColumn implements AttributeConverter<List<Evidence>, String> {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	@Override
	public String convertToDatabaseColumn(List<Evidence> evidence) {
		return JSON.writeValueAsString(evidence);
	}

	@Override
	public List<Evidence> convertToEntityAttribute(String column) {
		return JSON.readValue(column, new TypeReference<List<Evidence>>() {
		});
	}

}
