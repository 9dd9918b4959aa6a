package measuredwalk.clinic.pages;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.resource.NoResourceFoundException;

/** An address under the clinic's pages that leads nowhere answers as a page. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class UnknownAddress {

	@ExceptionHandler
	Object nowhere(NoResourceFoundException problem, HttpServletRequest request) {
		if (!request.getRequestURI().startsWith("/clinic")) {
			return ResponseEntity.of(problem.getBody()).build();
		}
		ModelAndView page = new ModelAndView("error", HttpStatus.NOT_FOUND);
		page.addObject("status", HttpStatus.NOT_FOUND.value());
		return page;
	}

}
