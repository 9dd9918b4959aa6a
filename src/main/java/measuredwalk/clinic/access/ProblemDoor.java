package measuredwalk.clinic.access;

import java.io.IOException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Turns away callers of the API with problem details (RFC 9457). */
@Component
class ProblemDoor implements AuthenticationEntryPoint, AccessDeniedHandler {

	private static final String PAUSE_SECONDS = "300";

	private final JsonMapper json;

	ProblemDoor(JsonMapper json) {
		this.json = json;
	}

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
			throws IOException {
		if (why instanceof TooManyTries) {
			response.setHeader(HttpHeaders.RETRY_AFTER, PAUSE_SECONDS);
			write(HttpStatus.TOO_MANY_REQUESTS, why.getMessage(), response);
		}
		else {
			response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Basic realm=\"clinic\", charset=\"UTF-8\"");
			write(HttpStatus.UNAUTHORIZED, "Send the name and password of a staff account by HTTP Basic.", response);
		}
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException why)
			throws IOException {
		write(HttpStatus.FORBIDDEN, "This account's role may not do that; ask an administrator.", response);
	}

	private void write(HttpStatus status, String detail, HttpServletResponse response) throws IOException {
		response.setStatus(status.value());
		response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
		this.json.writeValue(response.getOutputStream(), ProblemDetail.forStatusAndDetail(status, detail));
	}

}
