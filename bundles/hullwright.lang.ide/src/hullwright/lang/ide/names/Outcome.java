/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import java.util.concurrent.Callable;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * An answer, or why there is none. The server logs whatever fails while it works on a question, and a refusal is no failure.
 *
 * @param <T>     the answer
 * @param answer  the answer, null if it is refused
 * @param refusal a sentence for the person, null if there is an answer
 */
public record Outcome<T>(T answer, String refusal) {

	static <T> Outcome<T> of(Callable<T> work) {
		try {
			return new Outcome<>(work.call(), null);
		} catch (RenameRefused e) {
			return new Outcome<>(null, e.getMessage());
		} catch (RuntimeException e) {
			throw e;
		} catch (Exception e) {
			throw new IllegalStateException(e);
		}
	}

	/** The answer; the protocol's error with the sentence if there is none. */
	public T orRefusal() {
		if (refusal != null) {
			throw new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed, refusal, null));
		}
		return answer;
	}
}
