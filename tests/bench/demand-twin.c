/*
 * The demand loop of src/husbandry (appetite/meal-start.ts, appetite/meals.ts, supply/alone.ts) once more in C: a
 * yardstick of speed, and a second opinion on the sums. Reads the compiled roster as doubles (demand-twin.ts writes
 * them), prints due, wanted, late, missed, dangers and the processor seconds of the loop alone.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { INTERVAL = 1, ITEMS, ACCEPTANCE, CYCLE, PHASE, PRESENCE, ROUNDING, FIRST_INTERVAL };
enum { GENEROSITY = 1, WARMTH, SKIPPED };
enum { LATE = 1, DANGER = 2 };

/* Random numbers by key, as in src/maths/random.ts. */
static inline uint32_t mix32(uint32_t h) {
  h = (h ^ (h >> 16)) * 0x85ebca6bu;
  h = (h ^ (h >> 13)) * 0xc2b2ae35u;
  return h ^ (h >> 16);
}
static inline uint32_t join_keys(uint32_t a, uint32_t b) {
  return mix32((a * 0x9e3779b1u) ^ mix32(b + 0xc2b2ae3du));
}
static inline uint32_t day_key(uint32_t key, int day) { return mix32(key + (uint32_t)day * 0x85ebca77u); }
static inline double uniform(uint32_t key, uint32_t purpose) {
  return ((double)mix32(key + purpose * 0xc2b2ae3du) + 0.5) / 4294967296.0;
}

/* Wichura's AS 241, as in src/maths/normal.ts. */
static const double A[] = {3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.693765509461,
  45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227};
static const double B[] = {1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597,
  39307.89580009271, 28729.085735721943, 5226.495278852546};
static const double C[] = {1.4234371107496835, 4.630337846156545, 5.769497221460691, 3.6478483247632045,
  1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414};
static const double D[] = {1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008,
  0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-9};
static const double E[] = {6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
  0.026532189526576124, 0.0012426609473880784, 0.000027115555687434876, 2.0103343992922881e-7};
static const double F[] = {1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615,
  0.0007868691311456133, 0.000018463183175100548, 1.421511758316446e-7, 2.0442631033899397e-15};
static inline double horner(const double *c, double x) {
  double sum = 0;
  for (int i = 7; i >= 0; i--) sum = sum * x + c[i];
  return sum;
}
static double normal_quantile(double p) {
  double q = p - 0.5;
  if (fabs(q) <= 0.425) {
    double r = 0.180625 - q * q;
    return (q * horner(A, r)) / horner(B, r);
  }
  double tail = sqrt(-log(q < 0 ? p : 1 - p));
  double z = tail <= 5 ? horner(C, tail - 1.6) / horner(D, tail - 1.6) : horner(E, tail - 5) / horner(F, tail - 5);
  return q < 0 ? -z : z;
}

/* The file: a row of doubles, read in the order in which demand-twin.ts writes them. */
static double *at_file;
static double number(void) { return *at_file++; }
static double *reals(int n) {
  double *values = at_file;
  at_file += n;
  return values;
}
static int *ints(int n) {
  int *values = malloc(sizeof(int) * (size_t)(n + 1));
  for (int i = 0; i < n; i++) values[i] = (int)(int64_t)number();
  return values;
}

static int animals, steps, rules, groups, days, feeding_days, phases, replicates, never;
static uint32_t seed_key;
static double generosity_sd, skip_chance, last_share;
static int *key_of, *heads, *rule_of, *group_of, *interval_min, *interval_max, *last_taken, *not_before, *last_moult;
static int *last_tended, *premoult, *arrives_from, *arrives_to, *leaves_from, *leaves_to;
static double *cycle_log_mean, *cycle_passed, *arrives_chance, *leaves_chance, *appetite;
static int *items_min, *items_max, *wait_days, *retry, *grace, *safe_gap;
static double *cycle_log_sd, *acceptance, *acceptance_best, *premoult_from;
static int *next_feeding, *previous_feeding;

static void read_file(void) {
  animals = (int)number(), steps = (int)number(), rules = (int)number(), groups = (int)number();
  days = (int)number(), feeding_days = (int)number(), phases = (int)number(), replicates = (int)number();
  never = (int)number(), seed_key = (uint32_t)(int64_t)number();
  generosity_sd = number(), skip_chance = number(), last_share = 1 - sqrt(2.220446049250313e-16);
  key_of = ints(animals), heads = ints(animals);
  rule_of = ints(animals * steps), group_of = ints(animals * steps);
  interval_min = ints(animals * steps), interval_max = ints(animals * steps);
  cycle_log_mean = reals(animals * steps), cycle_passed = reals(animals);
  last_taken = ints(animals), last_tended = ints(animals), not_before = ints(animals);
  last_moult = ints(animals), premoult = ints(animals);
  arrives_from = ints(animals), arrives_to = ints(animals), arrives_chance = reals(animals);
  leaves_from = ints(animals), leaves_to = ints(animals), leaves_chance = reals(animals);
  appetite = reals(animals);
  items_min = ints(rules), items_max = ints(rules), wait_days = ints(rules), retry = ints(rules);
  grace = ints(rules), safe_gap = ints(rules);
  cycle_log_sd = reals(rules), acceptance = reals(rules * phases), acceptance_best = reals(rules);
  premoult_from = reals(rules);
  next_feeding = ints(feeding_days + 1), previous_feeding = ints(feeding_days + 1);
}

static double *due, *late, *missed, *dangers, *wanted, *items_now, *items_of;

/* One animal of one replicate. */
typedef struct {
  int i, at, rule, step, due_on, fed_on, range_to, counted, missed, present, gone;
  uint32_t key;
  double moulted, moults;
} Animal;

static inline int at_most(int a, int b) { return a < b ? a : b; }
static inline int at_least(int a, int b) { return a > b ? a : b; }

static inline int offered_on(int from, int to, int drawn) {
  if (drawn >= feeding_days) return feeding_days;
  int at = at_least(0, drawn), after = next_feeding[at], before = previous_feeding[at];
  int after_fits = after <= to, before_fits = before >= at_least(0, from);
  if (after_fits && before_fits) return at - before <= after - at ? before : after;
  return before_fits ? before : after;
}

static inline void schedule(Animal *a, int from, int to, int drawn) {
  a->due_on = offered_on(from, to, drawn);
  a->range_to = at_least(to, drawn);
  a->counted = a->missed = 0;
}

static void start_presence(Animal *a) {
  int i = a->i;
  a->present = 0, a->gone = days;
  if (arrives_from[i] != never) {
    int comes = uniform(a->key, PRESENCE) < arrives_chance[i];
    int day = arrives_from[i] + (int)floor(uniform(a->key, PHASE) * (arrives_to[i] - arrives_from[i] + 1));
    a->present = comes ? at_least(0, day) : days;
  }
  if (leaves_chance[i] > uniform(a->key, ROUNDING))
    a->gone = leaves_from[i] + (int)floor(uniform(a->key, PHASE) * (leaves_to[i] - leaves_from[i] + 1));
}

static void start_interval(Animal *a) {
  int i = a->i, min = interval_min[a->at], max = interval_max[a->at];
  int interval = min + (int)(uniform(a->key, FIRST_INTERVAL) * (max - min + 1));
  int fed = a->present > 0 ? a->present - min
    : last_taken[i] == never ? -1 - (int)(uniform(a->key, INTERVAL) * interval) : last_taken[i];
  int hold = at_least(not_before[i], a->present);
  int to = hold > fed + max ? hold + max - min : fed + max;
  a->fed_on = at_least(fed, last_tended[i]);
  schedule(a, at_least(fed + min, hold), to, at_least(fed + interval, hold));
}

static void start_cycle(Animal *a) {
  int i = a->i;
  double mean = cycle_log_mean[a->at];
  a->moulted = 0, a->moults = INFINITY;
  if (isnan(mean) || heads[i] > 1) return;
  double passed = last_moult[i] == never ? 0 : cycle_passed[i];
  double share = fmin(last_share, passed + uniform(a->key, CYCLE) * (1 - passed));
  double cycle = exp(mean + cycle_log_sd[a->rule] * normal_quantile(share));
  if (premoult[i] != never) {
    double from = premoult_from[a->rule], phase = from + (1 - from) * uniform(a->key, PHASE);
    a->moulted = premoult[i] - phase * cycle;
    a->moults = fmax(premoult[i] + (1 - phase) * cycle, 0.5);
    return;
  }
  a->moulted = last_moult[i] == never ? -uniform(a->key, PHASE) * cycle : last_moult[i];
  a->moults = fmax(a->moulted + cycle, 0.5);
}

static void moult_up_to(Animal *a, int day) {
  while (a->moults <= day) {
    double moult = a->moults;
    a->step = at_most(a->step + 1, steps - 1);
    a->at = a->i * steps + a->step, a->rule = rule_of[a->at];
    a->moulted = moult;
    double mean = cycle_log_mean[a->at];
    double u = uniform(day_key(a->key, (int)floor(moult)), CYCLE);
    a->moults = isnan(mean) ? INFINITY : moult + exp(mean + cycle_log_sd[a->rule] * normal_quantile(u));
  }
}

/* Whether the animal wants a meal; else it has gone or is hardening. */
static inline int comes_due(Animal *a, int day) {
  if (day >= a->gone) {
    a->due_on = days;
    return 0;
  }
  moult_up_to(a, day);
  int hard_until = a->moults < INFINITY && heads[a->i] == 1 ? (int)ceil(a->moulted + wait_days[a->rule]) : 0;
  if (day >= hard_until) return 1;
  a->fed_on = hard_until;
  schedule(a, hard_until, hard_until + interval_max[a->at] - interval_min[a->at], hard_until);
  return 0;
}

static inline int items_wanted(const Animal *a, uint32_t key, double generosity) {
  int min = items_min[a->rule], max = items_max[a->rule], n = heads[a->i];
  double u = uniform(key, ITEMS), mean;
  if (n == 1) {
    mean = min + (int)(u * (max - min + 1));
  } else {
    double width = max - min + 1, variance = (width * width - 1) / 12;
    double sum = (n * (double)(min + max)) / 2 + sqrt(n * variance) * normal_quantile(u);
    mean = fmin((double)n * max, fmax((double)n * min, floor(sum + 0.5)));
  }
  if (mean == 0) return 0;
  return at_least(min > 0, (int)floor(mean * generosity + uniform(key, ROUNDING)));
}

static inline double chance_taken(const Animal *a, int day) {
  if (heads[a->i] > 1) return 1;
  if (a->moults == INFINITY) return fmin(1, acceptance_best[a->rule] * appetite[a->i]);
  int phase = (int)floor(((day - a->moulted) / (a->moults - a->moulted)) * phases);
  return fmin(1, acceptance[a->rule * phases + at_most(phases - 1, at_least(0, phase))] * appetite[a->i]);
}

static void note_overdue(Animal *a, int day) {
  int seen = a->counted, now = seen, group = group_of[a->at];
  if (day >= a->range_to) now |= LATE;
  if (day >= a->fed_on + safe_gap[a->rule]) now |= DANGER;
  a->counted = now;
  now &= ~seen;
  late[group] += (now & LATE) != 0;
  dangers[group] += (now & DANGER) != 0;
  int over = day - a->range_to - grace[a->rule];
  int meals = over < 0 ? 0 : 1 + over / at_least(1, interval_max[a->at]);
  missed[group] += at_least(0, meals - a->missed);
  a->missed = at_least(a->missed, meals);
}

static inline void offer(Animal *a, int day, uint32_t key) {
  int min = interval_min[a->at], max = interval_max[a->at];
  a->fed_on = day;
  if (uniform(key, ACCEPTANCE) < chance_taken(a, day)) {
    schedule(a, day + min, day + max, day + min + (int)(uniform(key, INTERVAL) * (max - min + 1)));
  } else {
    int again = day + retry[a->rule];
    schedule(a, again, again + max - min, again);
  }
}

static void follow(int i, uint32_t replicate_key, double generosity, const unsigned char *open) {
  Animal a = {.i = i, .at = i * steps, .rule = rule_of[i * steps], .key = join_keys(replicate_key, (uint32_t)key_of[i])};
  start_presence(&a);
  start_interval(&a);
  if (at_most(at_most(a.due_on, a.range_to), a.fed_on + safe_gap[a.rule]) >= days) return;
  start_cycle(&a);
  for (int day = a.due_on; day < days; day = a.due_on) {
    int last = day - open[day];
    if (!open[day]) {
      note_overdue(&a, last);
      a.due_on = next_feeding[day + 1];
    } else if (comes_due(&a, day)) {
      if (day > 0) note_overdue(&a, last);
      uint32_t key = day_key(a.key, day);
      int group = group_of[a.at], items = items_wanted(&a, key, generosity);
      due[group]++;
      wanted[group * days + day] += items;
      items_now[group] += items;
      offer(&a, day, key);
    }
  }
  int overdue = days - 1 >= a.range_to || days - 1 >= a.fed_on + safe_gap[a.rule];
  if (overdue && comes_due(&a, days - 1)) note_overdue(&a, days - 1);
}

static void run_replicate(int r, unsigned char *open) {
  uint32_t key = join_keys(seed_key, (uint32_t)r);
  double sd = generosity_sd;
  double generosity = sd > 0 ? exp(sd * normal_quantile(uniform(key, GENEROSITY)) - (sd * sd) / 2) : 1;
  for (int day = 0; day < days; day++)
    open[day] = !(uniform(day_key(key, day), SKIPPED) < skip_chance) && next_feeding[day] == day;
  memset(items_now, 0, sizeof(double) * (size_t)groups);
  for (int i = 0; i < animals; i++) follow(i, key, generosity, open);
  memcpy(items_of + (size_t)r * (size_t)groups, items_now, sizeof(double) * (size_t)groups);
}

static double total(const double *values, int n) {
  double sum = 0;
  for (int i = 0; i < n; i++) sum += values[i];
  return sum;
}

static double *zeros(size_t n) { return calloc(n, sizeof(double)); }

int main(int argc, char **argv) {
  FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
  if (!file) return fprintf(stderr, "usage: demand-twin FILE\n"), 1;
  fseek(file, 0, SEEK_END);
  size_t bytes = (size_t)ftell(file);
  rewind(file);
  at_file = malloc(bytes);
  if (fread(at_file, 1, bytes, file) != bytes) return 1;
  fclose(file);
  read_file();
  due = zeros((size_t)groups), late = zeros((size_t)groups), missed = zeros((size_t)groups);
  dangers = zeros((size_t)groups), items_now = zeros((size_t)groups), wanted = zeros((size_t)(groups * days));
  items_of = zeros((size_t)groups * (size_t)replicates);
  unsigned char *open = calloc((size_t)days, 1);
  struct timespec start, end;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &start);
  for (int r = 0; r < replicates; r++) run_replicate(r, open);
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &end);
  double seconds = (double)(end.tv_sec - start.tv_sec) + (double)(end.tv_nsec - start.tv_nsec) / 1e9;
  printf("%.0f %.0f %.0f %.0f %.0f %.9f\n", total(due, groups), total(wanted, groups * days), total(late, groups),
         total(missed, groups), total(dangers, groups), seconds);
  return 0;
}
