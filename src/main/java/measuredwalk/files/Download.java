package measuredwalk.files;

import java.nio.charset.StandardCharsets;

import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** The answer by which a browser keeps a file and shows it nowhere. */
public final class Download {

	private Download() {
	}

	/**
	 * A file to keep, which no cache holds.
	 * @param fileName its name
	 * @param mediaType what it is, such as {@code text/csv}
	 * @param content its content
	 * @return the answer
	 */
	public static ResponseEntity<byte[]> of(String fileName, String mediaType, byte[] content) {
		ContentDisposition name = ContentDisposition.attachment().filename(fileName, StandardCharsets.UTF_8).build();
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(mediaType))
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
			.body(content);
	}

}
