package measuredwalk.clinic.pages;

import java.util.Arrays;

import jakarta.servlet.http.HttpServletRequest;
import measuredwalk.clinic.access.StaffRole;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

/** What all pages have in common: who looks at them, and what is said when one fails. */
@ControllerAdvice(basePackageClasses = PageFrame.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
class PageFrame {

	@ModelAttribute("staff")
	@Nullable StaffOnPage staff(HttpServletRequest request) {
		return Arrays.stream(StaffRole.values())
			.filter((role) -> request.isUserInRole(role.name()))
			.findFirst()
			.map((role) -> new StaffOnPage(request.getRemoteUser(), role.shown(), role != StaffRole.NURSE,
					role == StaffRole.ADMIN))
			.orElse(null);
	}

	@ExceptionHandler
	@ResponseStatus(HttpStatus.NOT_FOUND)
	String missing(NoSuchThing problem, HttpServletRequest request, Model model) {
		model.addAttribute("staff", staff(request));
		model.addAttribute("problem", problem.getMessage());
		return "clinic/problem";
	}

	@ExceptionHandler
	@ResponseStatus(HttpStatus.NOT_FOUND)
	String badAddress(MethodArgumentTypeMismatchException problem, HttpServletRequest request, Model model) {
		return missing(new NoSuchThing("page"), request, model);
	}

}
