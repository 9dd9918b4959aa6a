package measuredwalk.escalation;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;

import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the clinic has set for itself; the rest stands at its default. */
@Service
public class ClinicSettings {

	private static final int LONGEST = 400;

	private final JdbcClient database;

	private final Environment environment;

	private final Clock clock;

	ClinicSettings(JdbcClient database, Environment environment, Clock clock) {
		this.database = database;
		this.environment = environment;
		this.clock = clock;
	}

	/**
	 * What counts now.
	 * @param setting the setting
	 * @return its text, possibly empty
	 */
	public String text(ClinicSetting setting) {
		return this.database.sql("select text from clinic_setting where name = ?")
			.param(setting.name())
			.query(String.class)
			.optional()
			.orElseGet(() -> byDefault(setting));
	}

	/**
	 * What counts when the clinic has set nothing.
	 * @param setting the setting
	 * @return its text, possibly empty
	 */
	public String byDefault(ClinicSetting setting) {
		return this.environment.getProperty(setting.property(), setting.fallback());
	}

	/**
	 * Sets a setting, or puts it back to its default.
	 * @param setting the setting
	 * @param text the new text, or null for the default
	 * @param by who sets it
	 * @throws IllegalArgumentException when the text is no good; the message says what to
	 * write
	 */
	@Transactional
	public void set(ClinicSetting setting, @Nullable String text, String by) {
		if (text != null) {
			check(setting, text);
		}
		this.database.sql("delete from clinic_setting where name = ?").param(setting.name()).update();
		if (text != null && !text.equals(byDefault(setting))) {
			this.database.sql("insert into clinic_setting (name, text, set_by, set_at) values (?, ?, ?, ?)")
				.params(setting.name(), text, by, this.clock.instant().atOffset(ZoneOffset.UTC))
				.update();
		}
	}

	private void check(ClinicSetting setting, String text) {
		if (text.length() > LONGEST || text.chars().anyMatch(Character::isISOControl)) {
			throw new IllegalArgumentException("Write one line of at most " + LONGEST + " characters.");
		}
		switch (setting) {
			case OPENING_HOURS -> OpeningHours.of(text, ZoneOffset.UTC);
			case TIME_ZONE -> zone(text);
			case ALERT_MAIL -> addresses(text).forEach(ClinicSettings::checkAddress);
			case REVIEW_DESIGN -> Coded.of(ReviewDesign.class, text);
			case PHONE, OUT_OF_HOURS_PHONE -> {
			}
		}
	}

	private static ZoneId zone(String name) {
		try {
			return ZoneId.of(name);
		}
		catch (DateTimeException ex) {
			throw new IllegalArgumentException(
					"The time zone '" + name + "' is not known; write a name such as Europe/London.", ex);
		}
	}

	private static void checkAddress(String address) {
		if (!address.matches("[^@\\s]+@[^@\\s]+")) {
			throw new IllegalArgumentException("'" + address + "' is no e-mail address.");
		}
	}

	private static List<String> addresses(String text) {
		return Arrays.stream(text.split(",")).map(String::strip).filter((each) -> !each.isEmpty()).toList();
	}

	/**
	 * How owners reach the clinic.
	 * @return the numbers
	 */
	public ClinicContact contact() {
		return new ClinicContact(text(ClinicSetting.PHONE), text(ClinicSetting.OUT_OF_HOURS_PHONE));
	}

	/**
	 * Where the clinic is.
	 * @return its time zone
	 */
	public ZoneId zone() {
		return zone(text(ClinicSetting.TIME_ZONE));
	}

	/**
	 * When the clinic is open.
	 * @return the hours, in the clinic's zone
	 */
	public OpeningHours openingHours() {
		return OpeningHours.of(text(ClinicSetting.OPENING_HOURS), zone());
	}

	/**
	 * How keen the charts of a dog's course are.
	 * @return the design
	 */
	public ReviewDesign reviewDesign() {
		return Coded.of(ReviewDesign.class, text(ClinicSetting.REVIEW_DESIGN));
	}

	/**
	 * Who gets alerts by e-mail.
	 * @return addresses in the order in which they are told
	 */
	public List<String> alertMail() {
		return addresses(text(ClinicSetting.ALERT_MAIL));
	}

}
