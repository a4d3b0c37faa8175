"""A kernel under test, driven by jupyter_client. The command to start it comes from KERNEL_ARGV (a JSON list)."""

import json
import os
import time
import unittest
from queue import Empty

from jupyter_client.kernelspec import KernelSpec
from jupyter_client.manager import KernelManager

ARGV = json.loads(os.environ["KERNEL_ARGV"])
TIMEOUT = 60


class Manager(KernelManager):
    """Starts ARGV instead of an installed kernelspec."""

    argv = ARGV

    @property
    def kernel_spec(self):
        return KernelSpec(argv=self.argv, display_name="under test", language="java", interrupt_mode="message")


class Run:
    """What one execute request brought: its reply and, in order, what was published under it."""

    def __init__(self, reply, published, statuses, strays):
        self.reply = reply
        self.published = published
        self.statuses = statuses
        self.strays = strays

    @property
    def status(self):
        return self.reply["status"]

    def contents(self, kind):
        return [content for name, content in self.published if name == kind]

    def text(self, stream="stdout"):
        return "".join(content["text"] for content in self.contents("stream") if content["name"] == stream)

    @property
    def result(self):
        results = self.contents("execute_result")
        assert len(results) <= 1, results
        return results[0]["data"]["text/plain"] if results else None


class KernelCase(unittest.TestCase):
    """One kernel for all tests of a class, unless a test asks for its own."""

    extra_jvm = []

    @classmethod
    def launch(cls):
        manager = Manager()
        manager.argv = ARGV[:1] + cls.extra_jvm + ARGV[1:]
        manager.start_kernel()
        client = manager.client()
        client.start_channels()
        client.wait_for_ready(timeout=TIMEOUT)
        return manager, client

    @classmethod
    def setUpClass(cls):
        cls.manager, cls.client = cls.launch()

    @classmethod
    def tearDownClass(cls):
        cls.client.stop_channels()
        cls.manager.shutdown_kernel(now=True)

    def send(self, code, **options):
        return self.client.execute(code, **{"allow_stdin": False, **options})

    def collect(self, message_id, timeout=TIMEOUT):
        published, statuses, strays = [], [], []
        while True:
            message = self.client.get_iopub_msg(timeout=timeout)
            kind, content = message["msg_type"], message["content"]
            if message["parent_header"].get("msg_id") != message_id:
                strays.append((message["parent_header"].get("msg_id"), kind, content))
                continue
            if kind == "status":
                statuses.append(content["execution_state"])
                if content["execution_state"] == "idle":
                    break
            else:
                published.append((kind, content))
        return Run(self.reply(message_id, timeout), published, statuses, strays)

    def reply(self, message_id, timeout=TIMEOUT):
        while True:
            message = self.client.get_shell_msg(timeout=timeout)
            if message["parent_header"].get("msg_id") == message_id:
                return message["content"]

    def run_cell(self, code, timeout=TIMEOUT, **options):
        return self.collect(self.send(code, **options), timeout)

    def ok(self, code, **options):
        run = self.run_cell(code, **options)
        self.assertEqual("ok", run.status, run.reply.get("traceback"))
        return run

    def fails(self, code, **options):
        run = self.run_cell(code, **options)
        self.assertEqual("error", run.status)
        return run

    def request(self, name, *args, **options):
        return self.reply(getattr(self.client, name)(*args, **options))

    def drain(self):
        for fetch in (self.client.get_iopub_msg, self.client.get_shell_msg):
            while True:
                try:
                    fetch(timeout=0.1)
                except Empty:
                    break

    def await_text(self, message_id, wanted, timeout=TIMEOUT):
        """Waits until the running cell has printed `wanted`."""
        seen = ""
        end = time.monotonic() + timeout
        while wanted not in seen:
            self.assertLess(time.monotonic(), end, seen)
            message = self.client.get_iopub_msg(timeout=timeout)
            if message["msg_type"] == "stream" and message["parent_header"].get("msg_id") == message_id:
                seen += message["content"]["text"]
        return seen
