/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import hullwright.network.Boat;
import hullwright.network.SerialLine;
import hullwright.quantity.BitRate;
import hullwright.quantity.Ratio;

/**
 * A serial line in figures.
 *
 * @param line the line
 * @param rate how fast it signals
 * @param sharedRates the rates that all its ends can be set to, as far as their catalogs say
 * @param load what has to go over it
 * @param use how much of the line that takes; none where its rate is unknown
 * @param waiting how long sentences wait at the talker
 * @param ais what it has to carry when the channels of AIS are full, if it brings the reports of other ships
 * @param drives whether its talker can drive its listeners; more than one entry if more than one talks
 * @param joints what it joins: levels and current paths
 * @param buffers whether the stated buffers of its listeners take a burst
 * @param problems what is wrong with it
 * @param assumptions what was assumed where the text is silent
 */
public record SerialLineFigures(SerialLine line, LineRate rate, List<BitRate> sharedRates, SerialLoad load, Optional<LineUse> use,
		Waiting waiting, Optional<AisWorstCase> ais, List<TalkerDrive> drives, List<Joint> joints, List<BufferFit> buffers, List<SerialProblem> problems,
		List<SerialAssumption> assumptions) {

	public SerialLineFigures {
		sharedRates = List.copyOf(sharedRates);
		drives = List.copyOf(drives);
		joints = List.copyOf(joints);
		buffers = List.copyOf(buffers);
		problems = List.copyOf(problems);
		assumptions = List.copyOf(assumptions);
	}

	/** The serial lines of a boat with what their talkers tell of their own, in the order of the text. */
	public static List<SerialLineFigures> of(Boat boat) {
		DevicesOnBoard devices = DevicesOnBoard.of(boat);
		LinesInOrder lines = new LinesInOrder(boat, devices, line -> OwnSentences.of(line, devices));
		return boat.serialLines().stream().map(lines::figures).toList();
	}

	/**
	 * The serial lines of a boat, in the order of the text.
	 *
	 * @param sentences gives what goes over each, as the flow of data over the whole boat has it
	 */
	public static List<SerialLineFigures> of(Boat boat, Function<SerialLine, List<SentenceOnLine>> sentences) {
		LinesInOrder lines = new LinesInOrder(boat, DevicesOnBoard.of(boat), sentences);
		return boat.serialLines().stream().map(lines::figures).toList();
	}

	/**
	 * One serial line of a boat, on which no sentence comes later than usual.
	 *
	 * @param boat where its devices are looked up
	 * @param sentences what goes over it
	 */
	public static SerialLineFigures of(SerialLine line, Boat boat, List<SentenceOnLine> sentences) {
		return of(line, DevicesOnBoard.of(boat), LinesAtPorts.of(boat), SerialLoad.of(sentences));
	}

	static SerialLineFigures of(SerialLine line, DevicesOnBoard devices, LinesAtPorts lines, SerialLoad load) {
		LineEnds ends = LineEnds.of(line, devices);
		RateOfLine rate = RateOfLine.of(line, ends);
		Optional<BitRate> known = rate.rate().rate();
		Optional<LineUse> use = known.map(each -> LineUse.of(load, each));
		boolean several = ends.problems().stream().anyMatch(SerialProblem.SeveralTalkers.class::isInstance);
		Waiting waiting = several ? new Waiting.Unbounded(Waiting.Reason.SEVERAL_TALKERS)
				: known.map(each -> Waiting.of(load, each)).orElse(new Waiting.Unbounded(Waiting.Reason.RATE_UNKNOWN));
		List<SerialProblem> problems = new ArrayList<>(ends.problems());
		problems.addAll(lines.talkedToByOthers(line));
		problems.addAll(rate.problems());
		problems.addAll(lines.talkingAtOtherRates(line));
		use.flatMap(SerialLineFigures::overload).ifPresent(problems::add);
		return new SerialLineFigures(line, rate.rate(), rate.shared(), load, use, waiting, AisWorstCase.of(load, known),
				ends.talkers().stream().map(talker -> drive(talker, line, devices, lines)).toList(), ends.joints(),
				waiting instanceof Waiting.Bounded bounded ? buffers(bounded, ends) : List.of(), problems, assumptions(ends, rate));
	}

	private static Optional<SerialProblem> overload(LineUse use) {
		Ratio all = use.withEvents();
		if (Waiting.isFull(use.regular())) {
			return Optional.of(new SerialProblem.NeverDrains(use.regular()));
		}
		return Waiting.isFull(all) ? Optional.of(new SerialProblem.EventsMayFlood(all)) : Optional.empty();
	}

	private static TalkerDrive drive(LineEnd talker, SerialLine line, DevicesOnBoard devices, LinesAtPorts lines) {
		return TalkerDrive.of(talker, lines.listenersTo(talker, line).stream().filter(port -> !port.equals(talker.port()))
				.flatMap(port -> devices.end(port).stream()).toList());
	}

	private static List<BufferFit> buffers(Waiting.Bounded waiting, LineEnds ends) {
		return ends.listeners().stream().filter(each -> each.serial().buffer().isPresent())
				.map(each -> new BufferFit(each.port(), each.serial().buffer().get(), waiting.run())).toList();
	}

	private static List<SerialAssumption> assumptions(LineEnds ends, RateOfLine rate) {
		List<SerialAssumption> assumptions = new ArrayList<>();
		assume(assumptions, SerialAssumption.Kind.LISTENER_DRAW,
				ends.driven().stream().filter(each -> each.serial().draws().isEmpty()).toList());
		assume(assumptions, SerialAssumption.Kind.LISTENER_LEVEL,
				ends.driven().stream().filter(LineEnds::isLevelAssumed).toList());
		assume(assumptions, SerialAssumption.Kind.PORT_RATE, rate.assumed());
		return assumptions;
	}

	private static void assume(List<SerialAssumption> assumptions, SerialAssumption.Kind kind, List<LineEnd> ends) {
		if (!ends.isEmpty()) {
			assumptions.add(new SerialAssumption(kind, ends.stream().map(LineEnd::name).sorted().toList()));
		}
	}
}
