package measuredwalk.clinic.api;

import java.security.Principal;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.StaffChats;
import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Alerts, for the clinic's own systems. */
@RestController
@RequestMapping("/api")
class AlertApi {

	private final Alerts alerts;

	private final StaffChats staffChats;

	AlertApi(Alerts alerts, StaffChats staffChats) {
		this.alerts = alerts;
		this.staffChats = staffChats;
	}

	@GetMapping("/alerts")
	@Recorded("saw the alerts")
	ResponseEntity<List<Alert>> list(@RequestParam(required = false) @Nullable String status, Page page) {
		return page.of(this.alerts.list((status != null) ? status(status) : null));
	}

	private static AlertStatus status(String code) {
		try {
			return Coded.of(AlertStatus.class, code);
		}
		catch (IllegalArgumentException ex) {
			throw new BadRequest("status " + ex.getMessage() + ".");
		}
	}

	@PostMapping("/alerts/{id}/acknowledge")
	@Recorded("acknowledged an alert")
	Alert acknowledge(@PathVariable UUID id, @RequestBody(required = false) @Nullable Note note, Principal staff) {
		return this.alerts.acknowledge(id, staff.getName(), text(note)).orElseThrow(() -> new NotFound("alert", id));
	}

	@PostMapping("/alerts/{id}/close")
	@Recorded("closed an alert")
	Alert close(@PathVariable UUID id, @RequestBody(required = false) @Nullable Note note, Principal staff) {
		return this.alerts.close(id, staff.getName(), text(note)).orElseThrow(() -> new NotFound("alert", id));
	}

	@PostMapping("/alert-codes")
	@Recorded("made a code for a staff chat")
	@ResponseStatus(HttpStatus.CREATED)
	Code code(Principal staff) {
		return new Code(this.staffChats.makeCode(staff.getName()));
	}

	private static String text(@Nullable Note note) {
		String text = (note != null) ? Objects.requireNonNullElse(note.note(), "") : "";
		if (text.length() > 2000) {
			throw new BadRequest("'note' is too long; keep it under 2000 characters.");
		}
		return text;
	}

	record Note(@Nullable String note) {
	}

	record Code(String code) {
	}

}
