package measuredwalk.telegram;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A request as the Bot API takes it: JSON, or a form with files (RFC 7578).
 *
 * @param fields its fields by name
 * @param files the files in it by the name of their field
 * @param fileNames what they are called
 */
record StandInRequest(JsonNode fields, Map<String, byte[]> files, Map<String, String> fileNames) {

	private static final ObjectMapper MAPPER = new ObjectMapper();

	private static final Pattern NAME = Pattern.compile("\\bname=\"([^\"]*)\"");

	private static final Pattern FILE_NAME = Pattern.compile("\\bfilename=\"([^\"]*)\"");

	static StandInRequest of(String contentType, byte[] body) throws IOException {
		if (!contentType.startsWith("multipart/form-data")) {
			return new StandInRequest(MAPPER.readTree(body), Map.of(), Map.of());
		}
		ObjectNode fields = MAPPER.createObjectNode();
		Map<String, byte[]> files = new HashMap<>();
		Map<String, String> fileNames = new HashMap<>();
		// Every byte is one character of this alphabet, so nothing is lost.
		String form = new String(body, StandardCharsets.ISO_8859_1);
		String boundary = "--" + contentType.replaceAll(".*boundary=\"?([^\";]+).*", "$1");
		for (String part : form.split(Pattern.quote(boundary))) {
			int end = part.indexOf("\r\n\r\n");
			Matcher name = NAME.matcher((end < 0) ? "" : part.substring(0, end));
			if (name.find()) {
				byte[] content = part.substring(end + 4, part.length() - 2).getBytes(StandardCharsets.ISO_8859_1);
				Matcher fileName = FILE_NAME.matcher(part.substring(0, end));
				if (fileName.find()) {
					files.put(name.group(1), content);
					fileNames.put(name.group(1), fileName.group(1));
				}
				else {
					fields.put(name.group(1), new String(content, StandardCharsets.UTF_8));
				}
			}
		}
		return new StandInRequest(fields, files, fileNames);
	}

	long chatId() {
		return this.fields.path("chat_id").asLong();
	}

	String text(String field) {
		return this.fields.path(field).asText();
	}

	/** The buttons below a message; in a form they stand as text. */
	JsonNode buttons() throws IOException {
		JsonNode markup = this.fields.path("reply_markup");
		return (markup.isTextual() ? MAPPER.readTree(markup.asText()) : markup).path("inline_keyboard");
	}

	/** What a message brings: a new file, or one that is named in a field. */
	byte[] file(String field) {
		return this.files.get(partOf(field));
	}

	String fileName(String field) {
		return this.fileNames.getOrDefault(partOf(field), "");
	}

	private String partOf(String field) {
		String named = text(field);
		return named.startsWith("attach://") ? named.substring("attach://".length()) : field;
	}

}
