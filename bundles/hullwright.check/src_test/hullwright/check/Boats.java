/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.report.OccurrenceText;
import hullwright.rules.report.CheckReport;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Checks small texts the way the tests of this bundle want it.
 */
final class Boats {

	static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	private Boats() {
	}

	static CheckRequest request(String text) {
		return CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", text)), DAY);
	}

	static CheckReport check(String text) {
		return Checker.create().check(request(text));
	}

	/** Each finding as severity, rule, message and in brackets the boats. */
	static List<String> findings(CheckReport report) {
		return report.findings().stream().map(reported -> {
			String boats = OccurrenceText.of(reported.occurrence());
			return reported.finding().severity().word() + " " + reported.finding().rule() + ": " + reported.finding().message()
					+ (boats.isEmpty() ? "" : " [" + boats + "]");
		}).toList();
	}

	/** A boat with a backbone of two tees, whose text goes on with this. */
	static String skerry(String inSeries, String inNetwork) {
		return """
				import "standard:parts"
				series Skerry "Invented" { supply house { 12 V; fuse 3 A }
				  %s
				  network instruments {
				    backbone of light {
				      terminator left : endFemale
				      tee bow : block4 tap inlet : plainTap from house earths shield
				      cable 10 m
				      tee stern : block4
				      terminator right : endMale
				    }
				    %s
				  }
				}
				""".formatted(inSeries, inNetwork);
	}
}
