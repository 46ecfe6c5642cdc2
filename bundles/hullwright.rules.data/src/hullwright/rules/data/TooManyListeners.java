/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.TalkerDrive;
import hullwright.network.DevicePortRef;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A talker drives fewer listeners than its lines have.
 */
public final class TooManyListeners implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/too-many-listeners", "More listeners than the talker drives", Severity.ERROR,
				"{talker} has {listeners} that draw {drawn}; it drives {drives}",
				"what the catalog says of the talker; a listener draws 2 mA at 2 V at most (radio manuals, sections 9.3 and 9.4, I183)");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Map<DevicePortRef, Finding> findings = new LinkedHashMap<>();
		for (SerialLineFigures line : boat.figures().serialLines()) {
			for (TalkerDrive drive : line.drives()) {
				if (!drive.suffices().orElse(true)) {
					findings.computeIfAbsent(drive.talker(), talker -> finding(boat, line, drive));
				}
			}
		}
		return List.copyOf(findings.values());
	}

	private static Finding finding(BoatUnderCheck boat, SerialLineFigures line, TalkerDrive drive) {
		Finding.Builder finding = boat.finding(line.line().origin())
				.key(InWords.port(drive.talker()))
				.value("talker", InWords.port(drive.talker()))
				.value("listeners", drive.listeners() == 1 ? "1 listener" : drive.listeners() + " listeners")
				.value("drawn", drive.drawn());
		return drive.drivesListeners().filter(most -> most < drive.listeners()).isPresent()
				? finding.value("drives", drive.drivesListeners().get() == 1 ? "1 listener" : drive.drivesListeners().get() + " listeners").build()
				: finding.value("drives", drive.drive().orElseThrow()).build();
	}
}
