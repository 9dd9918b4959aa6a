package measuredwalk.clinic.api;

import measuredwalk.household.ChangedSince;
import measuredwalk.household.Refused;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import tools.jackson.databind.DatabindException;

/** What went wrong with a request, as RFC 9457 problem details that name the fix. */
@Order(Ordered.HIGHEST_PRECEDENCE)
@RestControllerAdvice(assignableTypes = { DogApi.class, AlertApi.class })
class ApiProblems {

	@ExceptionHandler
	ProblemDetail badRequest(BadRequest problem) {
		return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, problem.getMessage());
	}

	@ExceptionHandler
	ProblemDetail refused(Refused problem) {
		return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, problem.getMessage());
	}

	@ExceptionHandler
	ProblemDetail changedSince(ChangedSince problem) {
		return ProblemDetail.forStatusAndDetail(HttpStatus.PRECONDITION_FAILED, problem.getMessage());
	}

	@ExceptionHandler
	ProblemDetail notFound(NotFound problem) {
		return ProblemDetail.forStatusAndDetail(HttpStatus.NOT_FOUND, problem.getMessage());
	}

	@ExceptionHandler
	ProblemDetail unreadable(HttpMessageNotReadableException problem) {
		return ProblemDetail.forStatusAndDetail(HttpStatus.BAD_REQUEST, "The body cannot be read: " + field(problem));
	}

	private static String field(HttpMessageNotReadableException problem) {
		if (problem.getCause() instanceof DatabindException cause && !cause.getPath().isEmpty()) {
			return "'" + cause.getPath().get(0).getPropertyName() + "' has a value of the wrong kind.";
		}
		return "send it as JSON.";
	}

}
