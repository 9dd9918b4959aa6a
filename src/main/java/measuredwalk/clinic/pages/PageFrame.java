package measuredwalk.clinic.pages;

import java.util.Arrays;
import java.util.List;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import measuredwalk.clinic.access.StaffRole;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.ui.Model;
import org.springframework.validation.BindException;
import org.springframework.validation.FieldError;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
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
	String badAddress(MethodArgumentTypeMismatchException problem, HttpServletRequest request,
			HttpServletResponse response, Model model) {
		if (!problem.getParameter().hasParameterAnnotation(PathVariable.class)) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return unreadable(List.of(problem.getName()), request, model);
		}
		response.setStatus(HttpStatus.NOT_FOUND.value());
		return missing(new NoSuchThing("page"), request, model);
	}

	@ExceptionHandler
	@ResponseStatus(HttpStatus.BAD_REQUEST)
	String badForm(BindException problem, HttpServletRequest request, Model model) {
		return unreadable(problem.getFieldErrors().stream().map(FieldError::getField).distinct().toList(), request,
				model);
	}

	@ExceptionHandler
	@ResponseStatus(HttpStatus.BAD_REQUEST)
	String missingField(MissingServletRequestParameterException problem, HttpServletRequest request, Model model) {
		return unreadable(List.of(problem.getParameterName()), request, model);
	}

	private String unreadable(List<String> fields, HttpServletRequest request, Model model) {
		model.addAttribute("staff", staff(request));
		model.addAttribute("problem", "Nothing was saved, because this cannot be read: " + String.join(", ", fields)
				+ ". Go back, write it anew, and send it again.");
		return "clinic/problem";
	}

}
