/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;
import java.util.Optional;

/**
 * The operating point of a boat: every voltage and every current, under one set of conditions.
 *
 * @param conditions what it was computed for
 * @param devices what each device on a network gets, in the order of the text
 * @param sections the stretches of unbroken supply conductor
 * @param entries the places where supplies enter
 * @param spans the currents through every cable, contact and part
 * @param fuses the currents through every fuse and breaker
 * @param sources what every bank and converter gives
 * @param shifts how far the returns lie apart, by network
 * @param problems what kept it from being computed as it is
 * @param assumptions what was assumed where the text is silent
 */
public record PowerFlow(Conditions conditions, List<DeviceReading> devices, List<SectionReading> sections, List<EntryReading> entries,
		List<SpanReading> spans, List<FuseReading> fuses, List<SourceReading> sources, List<GroundShift> shifts, List<PowerProblem> problems,
		List<Assumption> assumptions) {

	public PowerFlow {
		devices = List.copyOf(devices);
		sections = List.copyOf(sections);
		entries = List.copyOf(entries);
		spans = List.copyOf(spans);
		fuses = List.copyOf(fuses);
		sources = List.copyOf(sources);
		shifts = List.copyOf(shifts);
		problems = List.copyOf(problems);
		assumptions = List.copyOf(assumptions);
	}

	/** Whether every figure is the same in another, which may be of another power state. */
	public boolean isAlike(PowerFlow other) {
		return conditions.in(other.conditions.state()).equals(other.conditions)
				&& new PowerFlow(other.conditions, devices, sections, entries, spans, fuses, sources, shifts, problems, assumptions).equals(other);
	}

	/** Whether every figure of the networks is the same in another, whatever banks do that feed none. */
	public boolean feedsAlike(PowerFlow other) {
		return devices.equals(other.devices) && sections.equals(other.sections) && entries.equals(other.entries) && spans.equals(other.spans)
				&& shifts.equals(other.shifts);
	}

	/** What a device gets. */
	public Optional<DeviceReading> of(String device) {
		return devices.stream().filter(each -> each.device().equals(device)).findFirst();
	}
}
