package measuredwalk.tolerance;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A clinic's choice of every {@link DosingSetting}. Not changed once made.
 */
public final class DosingSettings {

	private static final DosingSettings STANDARD = new DosingSettings(Map.of());

	private final Map<DosingSetting, Double> changed;

	private DosingSettings(Map<DosingSetting, Double> changed) {
		Map<DosingSetting, Double> copy = new EnumMap<>(DosingSetting.class);
		copy.putAll(changed);
		this.changed = Collections.unmodifiableMap(copy);
	}

	/**
	 * The defaults.
	 * @return nothing changed
	 */
	public static DosingSettings standard() {
		return STANDARD;
	}

	/**
	 * The same with one number changed.
	 * @param setting which
	 * @param value its new value, in the setting's unit
	 * @return the new choice
	 * @throws IllegalArgumentException when the value is out of the setting's range, or
	 * not whole where it must be; the message says what is allowed
	 */
	public DosingSettings with(DosingSetting setting, double value) {
		if (!(value >= setting.least() && value <= setting.most())) {
			throw new IllegalArgumentException(setting.code() + " must be from " + setting.least() + " to "
					+ setting.most() + " " + setting.unit() + ", not " + value);
		}
		if (setting.isWhole() && value != Math.rint(value)) {
			throw new IllegalArgumentException(
					setting.code() + " must be a whole number of " + setting.unit() + ", not " + value);
		}
		Map<DosingSetting, Double> next = new EnumMap<>(DosingSetting.class);
		next.putAll(this.changed);
		next.put(setting, value);
		return new DosingSettings(next);
	}

	/**
	 * The value of a setting.
	 * @param setting which
	 * @return the clinic's value, or the default
	 */
	public double value(DosingSetting setting) {
		return this.changed.getOrDefault(setting, setting.standard());
	}

	/**
	 * What the clinic has set, to be stored.
	 * @return the values by setting, without those never set
	 */
	public Map<DosingSetting, Double> changed() {
		return this.changed;
	}

	int whole(DosingSetting setting) {
		return (int) value(setting);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof DosingSettings settings && this.changed.equals(settings.changed);
	}

	@Override
	public int hashCode() {
		return this.changed.hashCode();
	}

	@Override
	public String toString() {
		return "DosingSettings" + this.changed;
	}

}
