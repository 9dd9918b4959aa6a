package measuredwalk.clinic.api;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** What nobody thought of is problem details too, and says nothing of the inside. */
@Order(Ordered.LOWEST_PRECEDENCE)
@RestControllerAdvice(assignableTypes = { DogApi.class, AlertApi.class })
class ApiBreakdown {

	private static final Logger log = LoggerFactory.getLogger(ApiBreakdown.class);

	@ExceptionHandler
	ProblemDetail broken(Exception problem) {
		log.error("A request of the API could not be answered.", problem);
		return ProblemDetail.forStatusAndDetail(HttpStatus.INTERNAL_SERVER_ERROR,
				"Something is broken here; the log of the server says what. Nothing was changed.");
	}

}
