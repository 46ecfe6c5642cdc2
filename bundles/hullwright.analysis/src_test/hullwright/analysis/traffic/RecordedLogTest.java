/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import hullwright.analysis.traffic.RecordedLog.Recorded;
import hullwright.network.FittedDevice;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The load that is predicted from which messages were seen how often, against the bits of all frames of the recording, built one by
 * one and counted.
 */
class RecordedLogTest {

	/** The recorder's own notes have a number that no PGN can have. */
	private static final int NO_PGN = 262386;

	/** The range that makers use for fast packets of their own begins here (open CANboat PGN database). */
	private static final int MAKERS_FAST_PACKETS = 130816;

	private static final int SATELLITES = 129540;

	private record Stream(int from, int pgn) {
	}

	/** What all frames of the recording amount to. */
	private record Counted(long frames, long bits, long unstuffed) {
	}

	private static List<Recorded> recording;

	@BeforeAll
	static void read() throws IOException {
		recording = RecordedLog.read();
	}

	@Test
	void theRecordingIsReadWhole() {
		assertEquals(21_595, recording.size());
		assertEquals(35, recording.stream().map(each -> new Stream(each.from(), each.pgn())).distinct().count());
		assertEquals(599.9, seconds(recording), 0.05);
	}

	/** 4.93 % of the bus predicted, 4.90 % counted; never more than with as many inserted bits as there can be. */
	@Test
	void thePredictedLoadIsWhatTheFramesAmountTo() {
		List<Recorded> messages = recording.stream().filter(each -> each.pgn() != NO_PGN).toList();
		Counted counted = count(messages);
		TrafficRate predicted = BusLoad.of(traffic(messages), BusLoad.NMEA_2000).total();
		double duration = seconds(messages);
		assertEquals(0.0490, counted.bits / duration / 250_000, 0.00005);
		assertEquals(1, predicted.typical().bitsPerSecond() * duration / counted.bits, 0.01);
		assertEquals(1, predicted.framesPerSecond() * duration / counted.frames, 0.002);
		assertTrue(predicted.worst().bitsPerSecond() * duration > counted.bits * 1.13);
	}

	/**
	 * What differs has two causes. The list of satellites is of another length than usual 53 times, two or three frames more or less.
	 * And these devices insert 0.074 bits for each that they send, where 0.082 are typical.
	 */
	@Test
	void nothingElseDiffers() {
		List<Recorded> messages = recording.stream().filter(each -> each.pgn() != NO_PGN && each.pgn() != SATELLITES).toList();
		Counted counted = count(messages);
		double inserted = (counted.bits - counted.unstuffed) / (double) counted.unstuffed;
		assertEquals(0.074, inserted, 0.0015);
		TrafficRate predicted = BusLoad.of(traffic(messages), BusLoad.NMEA_2000).total();
		double duration = seconds(messages);
		assertEquals(counted.frames, predicted.framesPerSecond() * duration, 1e-6);
		double withTheirOwnStuffing = predicted.typical().bitsPerSecond() / (1 + FrameLength.TYPICAL_STUFFING) * (1 + inserted);
		assertEquals(counted.bits, withTheirOwnStuffing * duration, 1e-3);
	}

	private static double seconds(List<Recorded> messages) {
		Duration between = Duration.between(messages.get(0).time(), messages.get(messages.size() - 1).time());
		return between.toMillis() / 1000.0;
	}

	private static boolean isFast(int pgn, int bytes) {
		return bytes > 8 || pgn >= MAKERS_FAST_PACKETS;
	}

	private static NetworkTraffic traffic(List<Recorded> messages) {
		double seconds = seconds(messages);
		Map<Integer, Map<Integer, List<Recorded>>> streams = messages.stream().collect(Collectors.groupingBy(Recorded::from, TreeMap::new,
				Collectors.groupingBy(Recorded::pgn, TreeMap::new, Collectors.toList())));
		List<FittedDevice> devices = new ArrayList<>();
		streams.forEach((from, sent) -> {
			List<SentMessage> sends = new ArrayList<>();
			sent.forEach((pgn, all) -> sends.add(Devices.sends(pgn(pgn, all), Devices.every(seconds / all.size()))));
			devices.add(Devices.device("address " + from, sends.toArray(SentMessage[]::new)));
		});
		return Devices.traffic(devices.toArray(FittedDevice[]::new));
	}

	/** A message as a catalog would state it: with its usual length. */
	private static Pgn pgn(int number, List<Recorded> all) {
		Map<Integer, Long> lengths = all.stream().collect(Collectors.groupingBy(each -> each.data().length, Collectors.counting()));
		int usual = lengths.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
		return Devices.pgn(number, isFast(number, usual) ? Pgn.Transport.FAST : Pgn.Transport.SINGLE, usual, all.get(0).priority());
	}

	private static Counted count(List<Recorded> messages) {
		long frames = 0;
		long bits = 0;
		long unstuffed = 0;
		for (Recorded message : messages) {
			int destination = (message.pgn() >> 8 & 0xFF) < 240 ? message.to() << 8 : 0;
			int identifier = message.priority() << 26 | message.pgn() << 8 | destination | message.from();
			for (int[] frame : frames(message)) {
				frames++;
				bits += WireBits.of(identifier, frame);
				unstuffed += 67 + 8 * frame.length;
			}
		}
		return new Counted(frames, bits, unstuffed);
	}

	/** The frames of a message; those of a fast packet are filled with ones, and their sequence is taken to be 0. */
	private static List<int[]> frames(Recorded message) {
		int[] data = message.data();
		if (!isFast(message.pgn(), data.length)) {
			return List.of(data);
		}
		List<int[]> frames = new ArrayList<>();
		for (int next = 0; next < data.length || frames.isEmpty();) {
			int[] frame = new int[8];
			Arrays.fill(frame, 0xFF);
			frame[0] = frames.size();
			int start = frames.isEmpty() ? 2 : 1;
			frame[1] = frames.isEmpty() ? data.length : frame[1];
			int count = Math.min(8 - start, data.length - next);
			System.arraycopy(data, next, frame, start, count);
			next += count;
			frames.add(frame);
		}
		return frames;
	}
}
