"""Time from starting a kernel to its first result, and of small cells after it, beside the Python kernel.

Usage: measure_start.py ROUNDS NAME=KERNEL_JSON ...
KERNEL_JSON is a kernelspec's kernel.json; the Python kernel is added by itself. Kernels take turns, round by round, so
that they share the machine's good and bad moments.
"""

import json
import statistics
import sys
import time

from jupyter_client.kernelspec import KernelSpec
from jupyter_client.manager import KernelManager

PYTHON = ["/usr/bin/python3", "-m", "ipykernel_launcher", "-f", "{connection_file}"]
CELLS = {"java": "int x{i} = {i} * 2;\nx{i} + 1", "python": "x{i} = {i} * 2\nx{i} + 1"}
COUNT = 40


def measure(argv, language):
    class Manager(KernelManager):
        @property
        def kernel_spec(self):
            return KernelSpec(argv=argv, display_name="measured", language=language, interrupt_mode="message")

    def run(code):
        start = time.monotonic()
        cell = client.execute(code)
        while True:
            message = client.get_iopub_msg(timeout=120)
            if (message["parent_header"].get("msg_id") == cell and message["msg_type"] == "status"
                    and message["content"]["execution_state"] == "idle"):
                break
        while client.get_shell_msg(timeout=120)["parent_header"].get("msg_id") != cell:
            pass
        return time.monotonic() - start

    start = time.monotonic()
    manager = Manager()
    manager.start_kernel()
    client = manager.client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=120)
        run("6 * 7")
        first = time.monotonic() - start
        second = run(CELLS[language].format(i=1))
        later = [run(CELLS[language].format(i=i)) for i in range(2, COUNT)]
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)
    return first, second, statistics.median(later[8:])


def main():
    rounds = int(sys.argv[1])
    kernels = {"Python kernel": (PYTHON, "python")}
    for argument in sys.argv[2:]:
        name, _, spec = argument.partition("=")
        with open(spec) as file:
            kernels[name] = (json.load(file)["argv"], "java")
    times = {name: [] for name in kernels}
    for _ in range(rounds):
        for name, (argv, language) in kernels.items():
            times[name].append(measure(argv, language))
    print("| kernel | start to first result | second cell | median of cells 10 to 40 |")
    print("|---|--:|--:|--:|")
    for name, rows in times.items():
        first, second, later = (statistics.median(column) for column in zip(*rows))
        print(f"| {name} | {first:.2f} s | {1000 * second:.0f} ms | {1000 * later:.0f} ms |")


if __name__ == "__main__":
    main()
