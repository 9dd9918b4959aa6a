package measuredwalk.clinic.access;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CsrfTokenRequestHandler;
import org.springframework.security.web.csrf.XorCsrfTokenRequestAttributeHandler;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** Who may see what over HTTP. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

	private static final String CONTENT_POLICY = "default-src 'self'; img-src 'self' data:; frame-ancestors 'none';"
			+ " form-action 'self'; base-uri 'none'; object-src 'none'";

	/** Figures of the running program, for a monitoring system. */
	private static final String METERS = "/actuator/prometheus";

	private static final String VET = StaffRole.VET.name();

	private static final String ADMIN = StaffRole.ADMIN.name();

	@Bean
	PasswordEncoder passwordEncoder() {
		return new BCryptPasswordEncoder();
	}

	@Bean
	@Order(1)
	SecurityFilterChain clinicSystemDoors(HttpSecurity http, ProblemDoor door) throws Exception {
		return http.securityMatcher("/api/**", "/v3/api-docs/**", "/v3/api-docs.yaml", METERS)
			.authorizeHttpRequests((requests) -> requests.requestMatchers(HttpMethod.DELETE, "/api/dogs/**")
				.hasAnyRole(VET, ADMIN)
				.requestMatchers(METERS, "/api/backups")
				.hasRole(ADMIN)
				.anyRequest()
				.authenticated())
			.httpBasic((basic) -> basic.authenticationEntryPoint(door))
			.exceptionHandling((problems) -> problems.authenticationEntryPoint(door).accessDeniedHandler(door))
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
	SecurityFilterChain pageDoors(HttpSecurity http, PageDoor door) throws Exception {
		return http
			.authorizeHttpRequests((requests) -> requests.requestMatchers(LoginPage.PATH)
				.permitAll()
				.requestMatchers("/clinic/accounts/**", "/clinic/record/**")
				.hasRole(ADMIN)
				.requestMatchers("/clinic/settings/**", "/clinic/dogs/*/erase")
				.hasAnyRole(VET, ADMIN)
				.requestMatchers("/clinic/**")
				.authenticated()
				.anyRequest()
				.permitAll())
			.formLogin((form) -> form.loginPage(LoginPage.PATH).defaultSuccessUrl("/clinic").failureHandler(door))
			.exceptionHandling((problems) -> problems.authenticationEntryPoint(door))
			.logout((logout) -> logout.logoutUrl("/clinic/logout").logoutSuccessUrl(LoginPage.PATH + "?problem=out"))
			.csrf((csrf) -> csrf.csrfTokenRequestHandler(earlyToken()))
			.headers((headers) -> headers.contentSecurityPolicy((policy) -> policy.policyDirectives(CONTENT_POLICY))
				.referrerPolicy((referrer) -> referrer.policy(ReferrerPolicy.SAME_ORIGIN)))
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
