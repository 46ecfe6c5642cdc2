/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What messages are on the wire: which devices send them, how much of the bus they take, and how long each may take at most.
 *
 * <p>{@link hullwright.analysis.traffic.NetworkTraffic} lists the messages of a network, {@link hullwright.analysis.traffic.BusLoad}
 * adds them up, {@link hullwright.analysis.traffic.ResponseTimes} bounds their delay, {@link hullwright.analysis.traffic.PowerUp}
 * tells what a start adds.
 */
package hullwright.analysis.traffic;
