package measuredwalk.clinic.access;

import java.io.IOException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.stereotype.Component;

/**
 * Shows the login form to whoever is not logged in. A part of a page that asks again by
 * itself is told to load the form as a whole page.
 */
@Component
class PageDoor implements AuthenticationEntryPoint, AuthenticationFailureHandler {

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
			throws IOException {
		if (request.getHeader("HX-Request") != null) {
			response.setHeader("HX-Redirect", LoginPage.PATH);
			response.setStatus(HttpStatus.UNAUTHORIZED.value());
		}
		else {
			response.sendRedirect(LoginPage.PATH);
		}
	}

	@Override
	public void onAuthenticationFailure(HttpServletRequest request, HttpServletResponse response,
			AuthenticationException why) throws IOException {
		response.sendRedirect(LoginPage.PATH + "?problem=" + ((why instanceof TooManyTries) ? "pause" : "wrong"));
	}

}
