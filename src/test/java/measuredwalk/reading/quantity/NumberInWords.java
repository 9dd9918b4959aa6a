package measuredwalk.reading.quantity;

/**
 * Writes numbers below a thousand in English words, apart from the grammar under test.
 */
public final class NumberInWords {

	private static final String[] SMALL = { "zero", "one", "two", "three", "four", "five", "six", "seven", "eight",
			"nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
			"nineteen" };

	private static final String[] TENS = { "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty",
			"ninety" };

	private NumberInWords() {
	}

	/**
	 * The number in words.
	 * @param number from 0 to 999
	 * @return such as {@code twenty-five}
	 */
	public static String of(int number) {
		if (number >= 100) {
			String hundreds = SMALL[number / 100] + " hundred";
			return number % 100 == 0 ? hundreds : hundreds + " and " + of(number % 100);
		}
		if (number < 20) {
			return SMALL[number];
		}
		return number % 10 == 0 ? TENS[number / 10] : TENS[number / 10] + "-" + SMALL[number % 10];
	}

}
