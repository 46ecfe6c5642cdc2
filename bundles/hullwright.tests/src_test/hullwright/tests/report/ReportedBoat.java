/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

/**
 * A boat with something to report: two drops that are too long, one of them waived, and a backbone with an open end.
 */
final class ReportedBoat {

	private ReportedBoat() {
	}

	/** Its text, with a title and a reason for the waiver. */
	static String text(String title, String reason) {
		return """
				import "standard:parts"
				series Skerry "%s" { supply house { 12 V; fuse 3 A }
				  waive cabling/drop-too-long on bus.second because "%s" until 2031-02-03
				  network bus {
				    backbone of light {
				      tee bow : block4 tap inlet : plainTap from house earths shield
				      cable 10 m
				      terminator right : endMale
				    }
				    drop bow.1 via 7 m of light to first : instrumentDisplay
				    drop bow.2 via 8 m of light to second : instrumentDisplay
				  }
				}
				""".formatted(title, reason);
	}
}
