/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Streams of frames for the tests of the analyses, and random sets of them.
 */
final class Streams {

	/** No errors, no frame that is not listed, and a horizon of many intervals. */
	static final BusTerms PLAIN = new BusTerms(0, 0, 1, 100_000);

	private Streams() {
	}

	static FrameStream stream(String sender, int identifier, int frames, int frameBits, long interval, long jitter) {
		return new FrameStream(sender, Queueing.BY_PRIORITY, new Identifiers(identifier, identifier), frames, frameBits, interval, jitter);
	}

	static FrameStream queued(FrameStream stream, Queueing queue) {
		return new FrameStream(stream.sender(), queue, stream.identifiers(), stream.frames(), stream.frameBits(), stream.interval(), stream.jitter());
	}

	static FrameStream identified(FrameStream stream, int identifier) {
		return new FrameStream(stream.sender(), stream.queue(), new Identifiers(identifier, identifier), stream.frames(), stream.frameBits(),
				stream.interval(), stream.jitter());
	}

	/** Two to eight streams of one to five devices, with a load from a third to a little above all of the bus. */
	static List<FrameStream> random(Random random, boolean someInOrder) {
		int count = 2 + random.nextInt(7);
		int senders = 1 + random.nextInt(5);
		boolean[] inOrder = new boolean[senders];
		for (int i = 0; i < senders; i++) {
			inOrder[i] = someInOrder && random.nextBoolean();
		}
		double load = 0.33 + 0.7 * random.nextDouble();
		List<FrameStream> streams = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			int frames = random.nextInt(4) == 0 ? 2 + random.nextInt(6) : 1;
			int bits = 80 + 10 * random.nextInt(9);
			double share = load / count * (0.5 + random.nextDouble());
			long interval = Math.max(1, Math.round(frames * bits / share));
			long jitter = random.nextInt(3) == 0 ? (long) (random.nextDouble() * random.nextInt(3) * interval) : 0;
			int sender = random.nextInt(senders);
			// few identifiers, so that some are shared by devices and some within a device
			int identifier = random.nextInt(6);
			streams.add(queued(stream("device" + sender, identifier, frames, bits, interval, jitter),
					inOrder[sender] ? Queueing.FIRST_IN_FIRST_OUT : Queueing.BY_PRIORITY));
		}
		Collections.shuffle(streams, random);
		return streams;
	}

	/** The bits of a bound, or the largest number if there is none. */
	static long bits(Delay delay) {
		return delay instanceof Delay.Bounded bounded ? bounded.bits() : Long.MAX_VALUE;
	}
}
