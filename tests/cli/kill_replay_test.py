"""Killing a replay at any moment loses no line it had printed."""
import json
import os
import random
import signal
import sqlite3
import subprocess

from program import DEMO, PROGRAM, Bench, entries_in, main, run

LONG = bool(os.environ.get("SHIMWRIGHT_LONG"))
# A build that looks for faults of memory is many times slower and says nothing more of what is on the disk.
TIMES = 10000 if LONG else int(os.environ.get("SHIMWRIGHT_KILLS", 200))
# Jobs in one store, one after the other killed and the next begun on what was left.
JOBS_IN_A_STORE = 10


def lines_of(printed):
    whole = printed.rsplit(b"\n", 1)[0] if b"\n" in printed else b""
    return [json.loads(line) for line in whole.splitlines()]


class Kill(Bench):
    def killed_after(self, command, lines):
        """Kills a program once so many lines are there; gives the lines it printed whole. Any program will do that prints
        a line for each thing it stored, once it is on the disk."""
        with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL) as running:
            printed = b"".join(running.stdout.readline() for _ in range(lines))
            running.send_signal(signal.SIGKILL)
            printed += running.stdout.read()
        return lines_of(printed)

    def is_whole(self, store, printed, before, where):
        """All that was acknowledged is there, the chain has no gap, and all of before is as it was; gives what is there."""
        there = entries_in(store)
        new = [job for job in there if job not in before]
        self.assertLessEqual(len(new), 1, where)
        self.assertEqual({job: there.get(job) for job in before}, before, where)
        acknowledged = {seq for line in printed for seq in line.get("entries", []) if line.get("accepted")}
        kept = there[new[0]] if new else set()
        self.assertEqual(acknowledged - kept, set(), where)
        self.assertEqual(kept, set(range(1, len(kept) + 1)), where)
        return there

    def is_at_its_place(self, store, printed, where):
        """Where nothing was stored after the last printed line, the job waits at the step that line named."""
        accepted = [line for line in printed if line.get("accepted")]
        if accepted:
            with sqlite3.connect(f"file:{store}?mode=ro", uri=True) as database:
                seq, step = database.execute("SELECT last_seq, next_step FROM job ORDER BY id DESC").fetchone()
            if seq == accepted[-1]["entries"][-1]:
                self.assertEqual(step, accepted[-1]["next"] or "", where)

    def test_what_was_printed_is_there(self):
        seed = random.SystemRandom().randrange(1 << 32)
        chance, interrupted = random.Random(seed), 0
        before, store = {}, None
        for turn in range(TIMES):
            where = f"seed {seed}, turn {turn}"
            if turn % JOBS_IN_A_STORE == 0:
                before, store = {}, self.folder / f"{turn}.shimwright"
            command = [PROGRAM, "replay", DEMO[1], "--store", store]
            printed = self.killed_after(command, chance.randrange(1, 120))
            there = self.is_whole(store, printed, before, where)
            self.is_at_its_place(store, printed, where)
            interrupted += "fold_hash" not in printed[-1]
            if turn % JOBS_IN_A_STORE == JOBS_IN_A_STORE - 1:
                self.assertEqual(run("check", "--store", store)[0], 0, where)
                for job in there:
                    status, out, err = run("record", job, "--store", store, "--summary")
                    self.assertEqual((status, err, bool(out)), (0, [], True), where)
            before = there
        self.assertGreater(interrupted, TIMES // 2)


main()
