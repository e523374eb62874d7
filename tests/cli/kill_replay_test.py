"""Killing a replay at any moment loses no line it had printed."""
import json
import os
import random
import signal
import subprocess

from program import DEMO, PROGRAM, Bench, entries_in, main, run

TIMES = 1000 if os.environ.get("SHIMWRIGHT_LONG") else 100


class Kill(Bench):
    def killed_after(self, store, lines):
        """Kills a replay once so many lines are there; gives the lines it printed whole."""
        with subprocess.Popen([PROGRAM, "replay", DEMO[1], "--store", store], stdout=subprocess.PIPE,
                              stderr=subprocess.DEVNULL) as running:
            printed = b"".join(running.stdout.readline() for _ in range(lines))
            running.send_signal(signal.SIGKILL)
            printed += running.stdout.read()
        whole = printed.rsplit(b"\n", 1)[0] if b"\n" in printed else b""
        return [json.loads(line) for line in whole.splitlines()]

    def test_what_was_printed_is_there(self):
        seed = random.SystemRandom().randrange(1 << 32)
        chance, interrupted = random.Random(seed), 0
        for turn in range(TIMES):
            store = self.folder / f"{turn}.shimwright"
            printed = self.killed_after(store, chance.randrange(1, 120))
            there = entries_in(store)
            acknowledged = {seq for line in printed for seq in line.get("entries", []) if line.get("accepted")}
            self.assertEqual(acknowledged - there, set(), f"seed {seed}, turn {turn}")
            self.assertEqual(there, set(range(1, len(there) + 1)), f"seed {seed}, turn {turn}")
            interrupted += "fold_hash" not in printed[-1]
            if turn % 10 == 0:
                self.assertEqual(run("check", "--store", store)[0], 0, f"seed {seed}, turn {turn}")
        self.assertGreater(interrupted, TIMES // 2)


main()
