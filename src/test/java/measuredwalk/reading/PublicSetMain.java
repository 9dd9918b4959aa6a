package measuredwalk.reading;

public class PublicSetMain {

	public static void main(String[] a) {
		for (String s : (a.length > 0 ? a
				: "durations distances numbers number-ranges temperatures clock-times time-ranges".split(" "))) {
			var sc = PublicSet.load(s).score();
			var c = PublicSet.load(s).core().score();
			System.out
				.println("== " + s + " all " + sc.right() + "/" + sc.lines() + " core " + c.right() + "/" + c.lines());
			var core = c.failures().stream().map(PublicSet.Failure::id).toList();
			for (var f : sc.failures())
				System.out.println((core.contains(f.id()) ? "CORE " : "") + f.id() + " | " + f.text() + "\n    want "
						+ f.expected() + "\n    got  " + f.got());
		}
	}

}
