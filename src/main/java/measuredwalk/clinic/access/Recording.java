package measuredwalk.clinic.access;

import java.security.Principal;
import java.util.Map;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Records each request that says what it does and came off. */
@Component
class Recording implements HandlerInterceptor, WebMvcConfigurer {

	private final AccessRecord record;

	Recording(AccessRecord record) {
		this.record = record;
	}

	@Override
	public void addInterceptors(InterceptorRegistry registry) {
		registry.addInterceptor(this).addPathPatterns("/clinic/**", "/api/**");
	}

	@Override
	public void afterCompletion(HttpServletRequest request, HttpServletResponse response, Object handler,
			@Nullable Exception problem) {
		Principal staff = request.getUserPrincipal();
		boolean cameOff = problem == null && response.getStatus() < HttpStatus.BAD_REQUEST.value();
		if (staff != null && cameOff && handler instanceof HandlerMethod method) {
			Recorded recorded = method.getMethodAnnotation(Recorded.class);
			if (recorded != null) {
				this.record.add(staff.getName(), recorded.value(), about(request));
			}
		}
	}

	private static String about(HttpServletRequest request) {
		Object places = request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE);
		return (places instanceof Map<?, ?> map && map.get("id") != null) ? String.valueOf(map.get("id")) : "";
	}

}
