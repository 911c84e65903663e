// The work of queues.mjs on std::priority_queue, with the same generator and the same draws, so that the results agree.
// Usage: queues mm1 CUSTOMERS | queues hold PENDING HOLDS. Prints seconds of processor time and the result.
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <deque>
#include <queue>
#include <string>
#include <vector>

using u32 = std::uint32_t;

static u32 nameHash(const std::string &name, u32 hash = 0x811c9dc5u) {
	for (unsigned char c : name) hash = (hash ^ c) * 0x01000193u;
	return hash;
}

static u32 mix(u32 h) {
	h = (h ^ (h >> 16)) * 0x85ebca6bu;
	h = (h ^ (h >> 13)) * 0xc2b2ae35u;
	return h ^ (h >> 16);
}

/** Tyche-i (S. Neves and F. Araujo 2011), seeded as src/engine/stream.ts does for replication 0. */
struct Stream {
	u32 a, b, c = 2654435769u, d = 1367130551u;

	Stream(const std::string &seed, const std::string &owner, u32 purpose) {
		const std::string name = std::to_string(seed.size()) + ":" + seed +
		                         std::to_string(owner.size()) + ":" + owner;
		const u32 high = mix(nameHash(name) ^ mix(purpose + 1));
		const u32 low = mix(nameHash(name, 0x2c1b3c6du) + (purpose + 1) * 0x9e3779b1u);
		const u32 r = 0x85ebca77u;
		a = mix(high + mix(r)) & 0x1fffffu;
		b = mix(low ^ mix(r + 0x27d4eb2fu));
		for (int k = 0; k < 20; k++) next();
	}

	u32 next() {
		b = (b << 25) ^ (b >> 7) ^ c;
		c = c - d;
		d = (d << 24) ^ (d >> 8) ^ a;
		a = a - b;
		b = (b << 20) ^ (b >> 12) ^ c;
		c = c - d;
		d = (d << 16) ^ (c >> 16) ^ a;
		a = a - b;
		return a;
	}

	double uniform() {
		const u32 top = next() >> 11;
		return (top + next() / 4294967296.0) / 2097152.0;
	}

	double exponential() { return -std::log(1 - uniform()); }
};

/** Ordered as the engine orders: time, then priority, then serial number. */
struct Event {
	double time;
	std::uint64_t order;
	u32 what;
	bool operator>(const Event &other) const {
		return time > other.time || (time == other.time && order > other.order);
	}
};
using Calendar = std::priority_queue<Event, std::vector<Event>, std::greater<Event>>;

static double seconds() { return double(std::clock()) / CLOCKS_PER_SEC; }

static double mm1(int customers) {
	Stream gaps("mm1", "gaps", 0), services("mm1", "services", 0);
	Calendar calendar;
	std::deque<double> line;
	std::uint64_t serial = 0;
	const std::uint64_t departure = std::uint64_t(1) << 45, arrival = std::uint64_t(2) << 45;
	bool busy = false;
	int arrived = 0, served = 0;
	double waits = 0, now = 0;
	auto begin = [&](double since) {
		busy = true;
		waits += now - since;
		calendar.push({now + 0.9 * services.exponential(), departure + serial++, 1});
	};
	calendar.push({gaps.exponential(), arrival + serial++, 0});
	while (!calendar.empty()) {
		const Event event = calendar.top();
		calendar.pop();
		now = event.time;
		if (event.what == 0) {
			if (++arrived < customers)
				calendar.push({now + gaps.exponential(), arrival + serial++, 0});
			if (busy) line.push_back(now);
			else begin(now);
		} else {
			served++;
			busy = false;
			if (!line.empty()) {
				const double since = line.front();
				line.pop_front();
				begin(since);
			}
		}
	}
	return waits / served;
}

int main(int argc, char **argv) {
	if (argc < 3) return 2;
	const int size = std::atoi(argv[2]);
	if (std::strcmp(argv[1], "mm1") == 0) {
		const double began = seconds();
		const double wait = mm1(size);
		std::printf("%.9f %.17g\n", seconds() - began, wait);
		return 0;
	}
	const int holds = std::atoi(argv[3]);
	Stream steps("hold", "steps", 0);
	Calendar calendar;
	std::uint64_t serial = 0;
	for (int i = 0; i < size; i++) calendar.push({steps.exponential(), serial++, u32(i)});
	const double began = seconds();
	double now = 0;
	for (int i = 0; i < holds; i++) {
		const Event event = calendar.top();
		calendar.pop();
		now = event.time;
		calendar.push({now + steps.exponential(), serial++, event.what});
	}
	std::printf("%.9f %.17g\n", seconds() - began, now);
}
