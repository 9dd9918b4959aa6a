package measuredwalk.clinic;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CsrfTokenRequestHandler;
import org.springframework.security.web.csrf.XorCsrfTokenRequestAttributeHandler;

/** Who may see what over HTTP. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

	private static final String CONTENT_POLICY = "default-src 'self'; img-src 'self' data:; frame-ancestors 'none';"
			+ " form-action 'self'; base-uri 'none'; object-src 'none'";

	@Bean
	PasswordEncoder passwordEncoder() {
		return new BCryptPasswordEncoder();
	}

	@Bean
	@Order(1)
	SecurityFilterChain clinicSystemDoors(HttpSecurity http) throws Exception {
		return http.securityMatcher("/api/**", "/v3/api-docs/**")
			.authorizeHttpRequests((requests) -> requests.anyRequest().authenticated())
			.httpBasic(Customizer.withDefaults())
			.csrf(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.build();
	}

	/**
	 * The rehearsal clock takes JSON only, which no form of another site can send; it is
	 * not there at all outside rehearsal.
	 */
	@Bean
	@Order(2)
	SecurityFilterChain openDoors(HttpSecurity http) throws Exception {
		return http.securityMatcher("/rehearsal/**", "/actuator/health/**")
			.authorizeHttpRequests((requests) -> requests.anyRequest().permitAll())
			.csrf(AbstractHttpConfigurer::disable)
			.sessionManagement((session) -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
			.build();
	}

	@Bean
	@Order(3)
	SecurityFilterChain pageDoors(HttpSecurity http) throws Exception {
		return http
			.authorizeHttpRequests(
					(requests) -> requests.requestMatchers("/clinic/**").authenticated().anyRequest().permitAll())
			.httpBasic(Customizer.withDefaults())
			.csrf((csrf) -> csrf.csrfTokenRequestHandler(earlyToken()))
			.headers((headers) -> headers.contentSecurityPolicy((policy) -> policy.policyDirectives(CONTENT_POLICY)))
			.build();
	}

	/**
	 * A long page is on its way before its first form: the token must be there before
	 * that.
	 */
	private static CsrfTokenRequestHandler earlyToken() {
		XorCsrfTokenRequestAttributeHandler handler = new XorCsrfTokenRequestAttributeHandler();
		handler.setCsrfRequestAttributeName(null);
		return handler;
	}

}
