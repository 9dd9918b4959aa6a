package measuredwalk.suggestions;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import measuredwalk.tolerance.DosingSetting;
import measuredwalk.tolerance.DosingSettings;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The dosing rule as the clinic has set it; the rest stands at its default. A change
 * counts from the next suggestion on.
 */
@Service
public class DosingRules {

	private final JdbcClient database;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	DosingRules(JdbcClient database, ApplicationEventPublisher events, Clock clock) {
		this.database = database;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * The rule that counts now.
	 * @return the clinic's choice
	 */
	public DosingSettings current() {
		DosingSettings settings = DosingSettings.standard();
		for (Map.Entry<DosingSetting, ChosenAmount> each : chosen().entrySet()) {
			settings = settings.with(each.getKey(), each.getValue().amount());
		}
		return settings;
	}

	/**
	 * What the clinic has set. A stored amount that a newer version of the program no
	 * longer knows or allows stands at its default.
	 * @return the amounts by setting, without those never set
	 */
	public Map<DosingSetting, ChosenAmount> chosen() {
		Map<DosingSetting, ChosenAmount> chosen = new EnumMap<>(DosingSetting.class);
		this.database.sql("select code, amount, set_by, set_at from dosing_setting").query((row) -> {
			ChosenAmount amount = new ChosenAmount(row.getDouble("amount"), row.getString("set_by"),
					row.getObject("set_at", OffsetDateTime.class).toInstant());
			known(row.getString("code")).filter((setting) -> setting.allows(amount.amount()))
				.ifPresent((setting) -> chosen.put(setting, amount));
		});
		return chosen;
	}

	private static Optional<DosingSetting> known(String code) {
		return Arrays.stream(DosingSetting.values()).filter((setting) -> setting.code().equals(code)).findFirst();
	}

	/**
	 * Sets a number of the rule. One that is the default is no longer counted as changed.
	 * @param setting which
	 * @param amount its new value, in the setting's unit
	 * @param by who sets it
	 * @throws IllegalArgumentException when the clinic may not set it to that; the
	 * message says what is allowed
	 */
	@Transactional
	public void set(DosingSetting setting, double amount, String by) {
		DosingSettings.standard().with(setting, amount);
		if (amount == setting.standard()) {
			backToDefault(setting);
			return;
		}
		OffsetDateTime now = this.clock.instant().atOffset(ZoneOffset.UTC);
		this.database
			.sql("insert into dosing_setting (code, amount, set_by, set_at) values (?, ?, ?, ?) on conflict do nothing")
			.params(setting.code(), amount, by, now)
			.update();
		this.database.sql("update dosing_setting set amount = ?, set_by = ?, set_at = ? where code = ?")
			.params(amount, by, now, setting.code())
			.update();
		this.events.publishEvent(new DosingRuleChanged(setting.code()));
	}

	/**
	 * Puts a number back to its default.
	 * @param setting which
	 */
	@Transactional
	public void backToDefault(DosingSetting setting) {
		this.database.sql("delete from dosing_setting where code = ?").param(setting.code()).update();
		this.events.publishEvent(new DosingRuleChanged(setting.code()));
	}

}
