package measuredwalk.clinic.pages;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import measuredwalk.escalation.ReviewDesign;

/**
 * A choice of how keen reviews are; public for the templates only.
 *
 * @param code its name in the form
 * @param name its name on the page
 * @param about whom it is for
 * @param figures what it costs and what it finds
 * @param chosen whether it counts now
 */
public record DesignLine(String code, String name, String about, String figures, boolean chosen) {

	static List<DesignLine> all(ReviewDesign chosen, DosingWords words) {
		return Arrays.stream(ReviewDesign.values())
			.map((design) -> new DesignLine(design.code(), words.name(design), words.about(design), figures(design),
					design == chosen))
			.toList();
	}

	private static String figures(ReviewDesign design) {
		return String.format(Locale.ROOT,
				"%.1f false reviews a dog in 180 days; %d in 100 real losses noticed within 30 days, half of them"
						+ " within %d days. In-control run length of the chart of signs: %.0f days; limit of the chart of"
						+ " cuts: %.1f.",
				design.falseReviews(), design.noticedInHundred(), design.medianDays(), design.burdenDays(),
				design.cutLimit());
	}

}
