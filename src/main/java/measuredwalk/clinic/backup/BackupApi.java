package measuredwalk.clinic.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import measuredwalk.clinic.access.Recorded;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Has a backup taken; to be called by the operator's own timetable. */
@RestController
class BackupApi {

	private final Backups backups;

	BackupApi(Backups backups) {
		this.backups = backups;
	}

	@PostMapping("/api/backups")
	@Recorded("took a backup")
	@ResponseStatus(HttpStatus.CREATED)
	Taken take() {
		try {
			Path file = this.backups.take();
			return new Taken(file.getFileName().toString(), Files.size(file));
		}
		catch (IOException ex) {
			throw problem(HttpStatus.INSUFFICIENT_STORAGE,
					"The folder of measuredwalk.backup-folder cannot be written to. Make it writable, or name another.");
		}
	}

	private static ErrorResponseException problem(HttpStatus status, String detail) {
		return new ErrorResponseException(status, ProblemDetail.forStatusAndDetail(status, detail), null);
	}

	/**
	 * A backup.
	 *
	 * @param file the file's name in the folder of backups
	 * @param bytes its size
	 */
	record Taken(String file, long bytes) {
	}

}
