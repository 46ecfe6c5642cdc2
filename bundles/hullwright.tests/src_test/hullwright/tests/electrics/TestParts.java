/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

/**
 * Parts for the tests of the electrics, invented: round figures, so that results can be told by hand. Contacts have no
 * resistance, but for those of the rough family; the cable has 0.1 ohm for each metre and conductor.
 */
final class TestParts {

	static final String CATALOG = """
			catalog Bench "Parts for tests, invented" {
				family plain "Connector without resistance" { standard; rated 4 A; contact 0 mohm }
				family rough "Connector with worn contacts" { standard; rated 4 A; contact 50 mohm }
				cable tenth "0.1 ohm a metre" { power 22 AWG, 100 mohm/m each way; signal 24 AWG; rated 3 A }
				cable half "0.05 ohm a metre" { power 20 AWG, 50 mohm/m each way; signal 24 AWG; rated 3 A }
				terminator endMale { end plain male; 120 ohm }
				terminator endFemale { end plain female; 120 ohm }
				tee tee1 { backbone plain male, plain female; port 1 : plain female }
				tee tee4 { backbone plain male, plain female; ports 1..4 : plain female }
				tee roughTee { backbone rough male, rough female; port 1 : plain female }
				tap inlet { backbone plain male, plain female; feeds both sides }
				tap split { backbone plain male, plain female; feeds both sides; breaks supply }
				tap fused { backbone plain male, plain female; feeds both sides; fuse each side 3 A of glass }
				isolator gap { backbone plain male, plain female; breaks supply, joins return }
				isolator wall { backbone plain male, plain female; breaks supply }
				cord tail { plain male to bare; length 1 m; power 22 AWG, 100 mohm/m each way }
				cord fusedTail { plain male to bare; length 1 m; power 22 AWG, 100 mohm/m each way; fuse 3 A of glass }
				fuse glass { rated 1 A, 3 A, 5 A, 10 A; drops 150 mV; opens at 2 times rated within 10 s; opens at 8 times rated within 100 ms }
				device amp "Draws 1 A" { port bus : plain male; supply 9 V .. 16 V; load 1 A constant current }
				device halfAmp "Draws 0.5 A" { port bus : plain male; supply 9 V .. 16 V; load 0.5 A constant current }
				device lamp "12 ohm" { port bus : plain male; supply 9 V .. 16 V; load 12 ohm }
				device radio "12 W whatever the voltage" { port bus : plain male; supply 9 V .. 16 V; load 12 W constant power }
				device idle "Draws nothing" { port bus : plain male; load 0 A constant current }
				device thruster { port bus : plain male; load 0 A constant current; own supply, not isolated, draws 300 A }
				device apartThruster { port bus : plain male; load 0 A constant current; own supply, isolated, draws 300 A }
				device openLink "Bridge whose ports share their return" { port a : plain male; port b : plain male }
				device link "Bridge" { port a : plain male; port b : plain male; isolated a from b }
			}
			""";

	private TestParts() {
	}
}
