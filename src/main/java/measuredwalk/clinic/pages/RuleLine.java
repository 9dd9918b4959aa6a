package measuredwalk.clinic.pages;

import java.time.LocalDate;

import measuredwalk.signs.Basis;

/**
 * A clinical rule on a page; public for the templates only.
 *
 * @param name its name
 * @param about when it fits, or what counts
 * @param grade how well founded it is
 * @param source where it is from
 * @param checked when it was checked and until when that counts
 * @param past whether that time is over
 */
public record RuleLine(String name, String about, String grade, String source, String checked, boolean past) {

	static RuleLine of(String name, String about, Basis basis, LocalDate today) {
		return new RuleLine(name, about, basis.grade() + ", " + basis.grade().shown(), basis.source(),
				checked(basis, today), basis.isPast(today));
	}

	/** When a rule was checked, in words. */
	static String checked(Basis basis, LocalDate today) {
		return "Checked " + Wording.date(basis.checkedOn()) + ", valid until " + Wording.date(basis.validUntil())
				+ (basis.isPast(today) ? ": past its date." : ".");
	}

}
