"""What a kernel has to bear: interrupts, input, faults of every kind, shutdown, load."""

import json
import os
import signal
import subprocess
import sys
import textwrap
import time
import unittest

from jupyter_client.manager import KernelManager

import kernel_client
from kernel_client import ARGV, KernelCase


class Interrupt(KernelCase):
    """Each cell prints a mark, so that it is known to run before it is interrupted."""

    def interrupted(self, code, before="", **options):
        self.ok("int kept = 41;")
        cell = self.send(before + 'System.out.println("running");' + code, **options)
        self.await_text(cell, "running")
        if options.get("allow_stdin"):
            self.client.get_stdin_msg(timeout=kernel_client.TIMEOUT)
        self.manager.interrupt_kernel()
        run = self.collect(cell)
        self.assertEqual("error", run.status)
        self.assertEqual("Interrupted", run.reply["ename"])
        self.assertTrue(run.reply["traceback"][0].startswith("Interrupted"))
        after = self.ok("kept + 1")
        self.assertEqual("42", after.result)
        self.assertEqual([], [stray for stray in after.strays if stray[1] == "stream"])

    def test_sleep(self):
        self.interrupted("Thread.sleep(60_000);")

    def test_busy_loop(self):
        self.interrupted("long n = 0; while (true) { n++; }")

    def test_busy_loop_in_a_method_of_the_notebook(self):
        self.ok("long spin() { long n = 0; for (;;) { n++; } }")
        self.interrupted("spin();")

    def test_loop_inside_the_library(self):
        self.interrupted("LongStream.iterate(0, n -> n + 1).filter(n -> n < 0).findFirst();")

    def test_print_loop(self):
        self.interrupted('while (true) { System.out.println("again and again"); }')

    def test_catch_everything_loop(self):
        self.interrupted(
            "while (true) { try { Thread.sleep(10); } catch (Throwable t) { } }")

    def test_catch_everything_around_a_loop_without_jumps_of_its_own(self):
        self.interrupted(
            "Runnable again = () -> { try { Thread.sleep(5); } catch (Throwable t) { } };"
            " Stream.generate(() -> again).forEach(Runnable::run);")

    def test_waiting_for_a_lock(self):
        self.interrupted("new CountDownLatch(1).await();")

    def test_blocked_read(self):
        self.interrupted("System.in.read();", allow_stdin=True)
        # The answer that comes too late is not the answer to the next question.
        self.client.input("too late")
        asked = self.send("new Scanner(System.in).nextLine()", allow_stdin=True)
        question = self.client.get_stdin_msg(timeout=kernel_client.TIMEOUT)
        self.assertEqual(asked, question["parent_header"]["msg_id"])
        self.client.input("in time")
        self.assertEqual("in time", self.collect(asked).result)

    def test_display_that_never_ends(self):
        self.ok("class Endless { public String toString() { while (true) { } } }")
        self.interrupted("new Endless()")

    def test_during_compilation(self):
        self.ok("int kept = 41;")
        body = "\n".join(f"int v{i}(int x) {{ return x * {i} + Integer.parseInt(\"{i}\"); }}" for i in range(60))
        cell = self.send(body + "\nThread.sleep(60_000);")
        self.await_start(cell)
        time.sleep(0.1)
        self.manager.interrupt_kernel()
        run = self.collect(cell)
        self.assertEqual("Interrupted", run.reply["ename"])
        self.assertEqual("42", self.ok("kept + 1").result)

    def await_start(self, cell):
        while True:
            message = self.client.get_iopub_msg(timeout=kernel_client.TIMEOUT)
            if message["msg_type"] == "execute_input" and message["parent_header"].get("msg_id") == cell:
                return

    def test_idle_kernel_is_not_disturbed(self):
        for _ in range(20):
            self.interrupt_and_wait()
            self.assertEqual("2", self.ok("1 + 1").result)

    def interrupt_and_wait(self):
        """The manager sends its request and goes on; a cell sent right after it could start first."""
        self.client.control_channel.send(self.client.session.msg("interrupt_request", {}))
        reply = self.client.get_control_msg(timeout=kernel_client.TIMEOUT)
        self.assertEqual("interrupt_reply", reply["msg_type"])

    def test_queue_is_aborted(self):
        first = self.send('System.out.println("running"); Thread.sleep(60_000);')
        second = self.send("int never = 1;")
        self.await_text(first, "running")
        self.manager.interrupt_kernel()
        self.assertEqual("error", self.collect(first).status)
        self.assertEqual("aborted", self.collect(second).status)

    def test_threads_of_an_interrupted_cell_serve_later_cells(self):
        self.interrupted("while (true) { }",
                         before="var pool = Executors.newSingleThreadExecutor(); pool.submit(() -> 1).get(); ")
        code = 'pool.submit(() -> { System.out.println("at work"); for (int i = 0; i < 3; i++) { } return 7; }).get()'
        self.assertEqual("7", self.ok(code).result)
        self.ok("pool.shutdown();")

    def test_again_and_again(self):
        for _ in range(5):
            self.interrupted("while (true) { }")


class Input(KernelCase):
    def ask(self, code, *answers):
        cell = self.send(code, allow_stdin=True)
        for prompt, password, answer in answers:
            question = self.client.get_stdin_msg(timeout=kernel_client.TIMEOUT)
            self.assertEqual("input_request", question["msg_type"])
            self.assertEqual({"prompt": prompt, "password": password}, question["content"])
            self.assertEqual(cell, question["parent_header"]["msg_id"])
            self.client.input(answer)
        return self.collect(cell)

    def test_stream(self):
        run = self.ask('var in = new Scanner(System.in); in.nextLine() + "|" + in.nextLine()',
                       ("", False, "first ä"), ("", False, "second"))
        self.assertEqual("first ä|second", run.result)

    def test_prompt_and_password(self):
        run = self.ask('input("Mud weight? ") + password("Secret? ")',
                       ("Mud weight? ", False, "10.4 "), ("Secret? ", True, "s"))
        self.assertEqual("10.4 s", run.result)

    def test_output_before_the_question_is_shown_before_it(self):
        cell = self.send('System.out.print("before "); input("?")', allow_stdin=True)
        self.await_text(cell, "before ")
        self.client.get_stdin_msg(timeout=kernel_client.TIMEOUT)
        self.client.input("x")
        self.collect(cell)

    def test_rest_of_a_line_is_not_the_next_cells_input(self):
        self.ask("System.in.read()", ("", False, "abc"))
        run = self.ask("(char) System.in.read()", ("", False, "xyz"))
        self.assertEqual("x", run.result)

    def test_front_end_that_cannot_be_asked(self):
        run = self.fails('input("?")')
        self.assertIn("nobody can be asked", run.reply["traceback"][0])


class Faults(KernelCase):
    extra_jvm = ["-Xmx256m"]

    def survives(self):
        self.assertEqual("42", self.ok("kept + 1").result)

    def setUp(self):
        self.ok("int kept = 41;")

    def test_error(self):
        self.assertEqual("Error: boo", self.fails('throw new Error("boo")').reply["traceback"][0])
        self.survives()

    def test_error_in_a_display(self):
        self.ok('class Bad { public String toString() { throw new StackOverflowError("bad"); } }')
        self.assertEqual("StackOverflowError", self.fails("new Bad()").reply["ename"])
        self.survives()

    def test_failing_static_initialiser(self):
        self.ok("class Init { static int v = 1 / Integer.parseInt(\"0\"); }")
        self.assertEqual("ExceptionInInitializerError", self.fails("Init.v").reply["ename"])
        self.survives()

    def test_stack_overflow(self):
        self.ok("int down(int n) { return down(n + 1) + 1; }")
        run = self.fails("down(0)")
        self.assertEqual("StackOverflowError", run.reply["ename"])
        self.assertLess(len(run.reply["traceback"]), 10)
        self.survives()

    def test_out_of_heap_in_large_pieces(self):
        run = self.fails("List<byte[]> hog = new ArrayList<>(); while (true) { hog.add(new byte[1 << 20]); }")
        self.assertEqual("OutOfMemoryError", run.reply["ename"])
        self.assertIn("-Xmx", run.reply["traceback"][0])
        self.survives()
        self.ok("hog = null;")
        self.survives()

    def test_out_of_heap_in_small_pieces(self):
        run = self.fails("List<Object> crumbs = new LinkedList<>(); while (true) { crumbs.add(new int[2]); }")
        self.assertEqual("OutOfMemoryError", run.reply["ename"])
        self.survives()
        self.ok("crumbs = null;")
        self.survives()

    def test_exit(self):
        for code in ("System.exit(3);", "Runtime.getRuntime().exit(3);", "Runtime.getRuntime().halt(3);"):
            with self.subTest(code):
                self.assertIn("exit(3) would end the kernel", self.fails(code).reply["traceback"][0])
                self.survives()

    def test_fault_of_a_thread_the_cell_started(self):
        run = self.ok('var t = new Thread(() -> { throw new Error("aside"); }); t.start(); t.join();')
        self.assertIn("aside", run.text("stderr"))
        self.survives()


class OwnKernel(unittest.TestCase):
    """Tests that end the kernel they use."""

    def setUp(self):
        self.manager, self.client = KernelCase.launch()
        self.addCleanup(self.end)

    def end(self):
        self.client.stop_channels()
        self.manager.shutdown_kernel(now=True)

    def ended(self):
        end = time.monotonic() + kernel_client.TIMEOUT
        while self.manager.is_alive() and time.monotonic() < end:
            time.sleep(0.05)
        return not self.manager.is_alive()

    def shut_down(self, code):
        cell = self.client.execute('System.out.println("running");' + code)
        while True:
            message = self.client.get_iopub_msg(timeout=kernel_client.TIMEOUT)
            if message["msg_type"] == "stream" and message["parent_header"]["msg_id"] == cell:
                break
        self.client.shutdown()
        reply = self.client.get_control_msg(timeout=kernel_client.TIMEOUT)
        self.assertEqual({"status": "ok", "restart": False}, reply["content"])
        self.assertTrue(self.ended())

    def test_shutdown_while_idle(self):
        self.shut_down("")

    def test_shutdown_while_asleep(self):
        self.shut_down("Thread.sleep(600_000);")

    def test_shutdown_while_catching_everything(self):
        self.shut_down("while (true) { try { Thread.sleep(5); } catch (Throwable t) { } }")

    def test_shutdown_with_a_thread_left_running(self):
        self.shut_down("var pool = Executors.newFixedThreadPool(1); pool.submit(() -> { while (true) { } });")

    def test_library_that_ends_the_jvm(self):
        # Reflection is not seen in the bytecode of the cell, so this ends the JVM; the front end is told so.
        cell = self.client.execute('System.class.getMethod("exit", int.class).invoke(null, 3);')
        while True:
            reply = self.client.get_shell_msg(timeout=kernel_client.TIMEOUT)
            if reply["parent_header"].get("msg_id") == cell:
                break
        self.assertEqual("error", reply["content"]["status"])
        self.assertIn("ended the JVM", reply["content"]["traceback"][0])
        self.assertTrue(self.ended())

    def test_restart(self):
        self.manager.restart_kernel()
        self.client.wait_for_ready(timeout=60)
        self.client.execute("1 + 1")
        self.assertEqual("ok", self.client.get_shell_msg(timeout=kernel_client.TIMEOUT)["content"]["status"])


class ParentGone(unittest.TestCase):
    def test_kernel_ends_with_the_client_that_started_it(self):
        script = textwrap.dedent("""
            import sys, time
            sys.path.insert(0, %r)
            from kernel_client import KernelCase
            manager, client = KernelCase.launch()
            print(manager.provisioner.pid, flush=True)
            time.sleep(600)
        """) % os.path.dirname(os.path.abspath(__file__))
        client = subprocess.Popen([sys.executable, "-c", script], stdout=subprocess.PIPE, text=True)
        kernel = int(client.stdout.readline())
        client.send_signal(signal.SIGKILL)
        client.wait()
        client.stdout.close()
        end = time.monotonic() + kernel_client.TIMEOUT
        while alive(kernel) and time.monotonic() < end:
            time.sleep(0.1)
        self.assertFalse(alive(kernel))


def alive(pid):
    try:
        with open(f"/proc/{pid}/stat") as stat:
            return stat.read().rsplit(")", 1)[1].split()[0] != "Z"
    except FileNotFoundError:
        return False


class Load(KernelCase):
    extra_jvm = ["-Xmx512m"]

    def used(self):
        code = (
            "{ for (int i = 0; i < 3; i++) { System.gc(); Thread.sleep(50); }"
            " var r = Runtime.getRuntime(); System.out.print(r.totalMemory() - r.freeMemory()); }"
        )
        return int(self.ok(code, store_history=False).text())

    def test_five_hundred_cells_retain_little(self):
        def cells(first, count):
            for i in range(first, first + count):
                changing = (
                    f"record R(int v) {{ int w{i}() {{ return v; }} }}",
                    f'String f(int a) {{ return "{i}" + a; }}',
                    f"System.out.println({i});",
                    f"double[] data = new double[500_000];",
                    f"n{i - 1} + data.length",
                )[i % 5]
                self.ok(f"int n{i} = {i};\n{changing}")
        self.ok("int n0 = 0;\ndouble[] data = {};")
        cells(1, 20)
        before = self.used()
        cells(21, 500)
        retained = (self.used() - before) / 1e6
        print(f"500 cells retain {retained:.1f} MB", flush=True)
        self.assertLess(retained, 50)

    def test_state_after_many_errors(self):
        self.ok("int base = 1;")
        for i in range(30):
            self.fails(f"int e{i} = base / 0;", stop_on_error=False)
        self.assertEqual("1", self.ok("base").result)


if __name__ == "__main__":
    unittest.main()
