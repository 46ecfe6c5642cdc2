/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

/**
 * The text of a small boat in which nothing is wrong. Everything in it is invented.
 */
final class SmallBoat {

	static final String TERMINATOR = "\t\t\tterminator right : endMale at helm\n";

	static final String TEXT = """
			import "standard:parts"

			/* A dinghy,
			   for tests only. */
			series Dinghy "Dinghy for tests" revision "A" {

				places {
					helm "Helm"
				}

				switch electronics

				supply battery "House battery" {
					12 V, lowest 11.0 V, highest 14.6 V
					switch electronics
					fuse 3 A
					lead 2 m each way of 1.5 mm2
				}

				network instruments of kind instrument bus {
					backbone of light {
						terminator left : endFemale at helm
						tap feed : midTap at helm from battery earths shield
						cable 1 m
						tee block : block4 at helm
						terminator right : endMale at helm
					}
					// one device will do
					drop block.1 via 1 m of light to display : instrumentDisplay at helm
				}

				hull 1
			}
			""";

	private SmallBoat() {
	}
}
