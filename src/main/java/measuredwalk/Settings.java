package measuredwalk;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Map;

import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.MapPropertySource;
import org.springframework.util.StringUtils;

/** Works out what was not set, and refuses settings that must not go together. */
class Settings implements EnvironmentPostProcessor {

	/**
	 * Ofcom keeps 01632 960000 to 960999 for drama: nobody is called by it. From memory.
	 */
	private static final String INVENTED_PHONE = "01632 960 150";

	private static final String TIME_ZONE = "measuredwalk.time-zone";

	private static final String REHEARSAL = "measuredwalk.rehearsal";

	@Override
	public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
		boolean token = StringUtils.hasText(environment.getProperty("measuredwalk.telegram.token"));
		boolean ownServer = StringUtils.hasText(environment.getProperty("measuredwalk.telegram.api-url"));
		checkTimeZone(environment.getProperty(TIME_ZONE, "UTC"));
		String rehearsal = environment.getProperty(REHEARSAL, String.valueOf(!token)).strip();
		if (!rehearsal.equals("true") && !rehearsal.equals("false")) {
			throw new SettingProblem(REHEARSAL + " is '" + rehearsal + "'; set it to true or false.");
		}
		if (rehearsal.equals("true") && token && !ownServer) {
			throw new SettingProblem(REHEARSAL + " is true while measuredwalk.telegram.token is set for the public"
					+ " Bot API: real people must not be written to in a rehearsal. Take the token out, set "
					+ REHEARSAL + " to false, or name your own Bot API server in measuredwalk.telegram.api-url.");
		}
		environment.getPropertySources()
			.addFirst(new MapPropertySource("workedOutSettings", Map.of(REHEARSAL, rehearsal)));
		if (rehearsal.equals("true")) {
			environment.getPropertySources()
				.addLast(new MapPropertySource("rehearsalSettings",
						Map.of("measuredwalk.clinic.phone", INVENTED_PHONE)));
		}
	}

	private static void checkTimeZone(String name) {
		try {
			ZoneId.of(name);
		}
		catch (DateTimeException ex) {
			throw new SettingProblem(TIME_ZONE + " is '" + name + "'; set it to a name such as Europe/London.");
		}
	}

}
