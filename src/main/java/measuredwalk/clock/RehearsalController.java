package measuredwalk.clock;

import java.time.Instant;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

@RestController
@RequestMapping("/rehearsal/clock")
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
class RehearsalController {

	private final Rehearsal rehearsal;

	RehearsalController(Rehearsal rehearsal) {
		this.rehearsal = rehearsal;
	}

	@GetMapping
	Shown now() {
		return new Shown(this.rehearsal.now());
	}

	@PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
	Shown move(@RequestBody Asked asked) {
		if (asked.now() == null) {
			throw new ResponseStatusException(HttpStatus.BAD_REQUEST,
					"'now' is missing: send {\"now\":\"2026-03-15T07:40:00Z\"}.");
		}
		try {
			this.rehearsal.moveTo(asked.now());
		}
		catch (IllegalArgumentException ex) {
			throw new ResponseStatusException(HttpStatus.BAD_REQUEST, ex.getMessage(), ex);
		}
		return new Shown(asked.now());
	}

	record Shown(Instant now) {
	}

	record Asked(@Nullable Instant now) {
	}

}
