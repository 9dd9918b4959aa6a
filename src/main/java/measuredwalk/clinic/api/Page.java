package measuredwalk.clinic.api;

import java.util.List;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.ResponseEntity;

/**
 * Which part of a list is asked for. Without parameters it is all of it.
 *
 * @param page the page, the first one is 0
 * @param size entries on a page, 1 to 1000
 */
@ParameterObject
record Page(
		@Schema(description = "The page, the first one is 0; without page and size the whole list is given",
				minimum = "0") @Nullable Integer page,
		@Schema(description = "Entries on a page; 100 when only a page is asked for", minimum = "1",
				maximum = "1000") @Nullable Integer size) {

	private static final int USUAL_SIZE = 100;

	private static final int LARGEST_SIZE = 1000;

	<T> ResponseEntity<List<T>> of(List<T> all) {
		return ResponseEntity.ok().header("X-Total-Count", String.valueOf(all.size())).body(part(all));
	}

	private <T> List<T> part(List<T> all) {
		if (this.page == null && this.size == null) {
			return all;
		}
		long number = (this.page != null) ? this.page : 0;
		int length = (this.size != null) ? this.size : USUAL_SIZE;
		if (number < 0 || length < 1 || length > LARGEST_SIZE) {
			throw new BadRequest("page must be 0 or more and size 1 to " + LARGEST_SIZE + ".");
		}
		return all.stream().skip(number * length).limit(length).toList();
	}

}
