/*
 * The twin of the larder's days: reads bins as doubles (number of bins, days; then per bin: compartments n, first
 * compartment that is a head, capacity, deaths per day for each capacity over, then exit, advance, birth, whether an
 * egg and heads, n each), lays out each bin's day as a band by uniformisation, plays the days and prints, for each
 * bin, the heads at the end; last the processor seconds.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static const double NEGLIGIBLE = 1e-16, LEFT_OUT = 1e-17;

typedef struct {
  int n, first_head, first_birth;
  double capacity, deaths, q;
  const double *exit, *advance, *birth, *egg;
  double *heads;
} Bin;

static double total(const double *x, int from, int n) {
  double sum = 0;
  for (int j = from; j < n; j++) sum += x[j];
  return sum;
}

/* One head of compartment `from` followed for a day, by jumps of I + A/q with Poisson weights. */
static double jumped(const Bin *b, int from, double laying, double *out) {
  int n = b->n;
  double now[n], next[n];
  memset(now, 0, sizeof now);
  now[from] = 1;
  double weight = exp(-b->q), size = 1, born_now = 0, born = 0;
  for (int j = 0; j < n; j++) out[j] = now[j] * weight;
  for (int m = 1; m <= b->q || weight * size > NEGLIGIBLE; m++) {
    weight *= b->q / m;
    double incoming = 0, laid = 0;
    for (int j = b->first_birth; j < n; j++) laid += b->birth[j] / b->q * now[j];
    laid *= laying;
    for (int j = 0; j < n; j++) {
      next[j] = (1 - b->exit[j] / b->q) * now[j] + incoming;
      incoming = b->advance[j] / b->q * now[j];
    }
    next[0] += laid;
    for (int j = 0; j < n; j++) out[j] += weight * next[j];
    born_now += laid;
    born += weight * born_now;
    size += laid;
    memcpy(now, next, sizeof now);
  }
  return born;
}

static void play(Bin *b, int days) {
  int n = b->n, width = 1;
  double *columns = malloc(sizeof(double) * n * n);
  for (int j = 0; j < n; j++) {
    jumped(b, j, 0, columns + j * n);
    for (int i = n - 1; i >= j + width; i--)
      if (columns[j * n + i] > LEFT_OUT) width = i - j + 1;
  }
  double *shares = calloc(n * width, sizeof(double));
  for (int j = 0; j < n; j++)
    for (int d = 0; d < width && j + d < n; d++) shares[(j + d) * width + d] = columns[j * n + j + d];
  int first = b->first_birth - width + 1;
  if (first < 0) first = 0;
  int bearing = n - first;
  double *young = malloc(sizeof(double) * bearing * n), with[n];
  int young_width = 0;
  for (int k = 0; k < bearing; k++) {
    jumped(b, first + k, 1, with);
    for (int j = 0; j < n; j++) {
      young[k * n + j] = with[j] - columns[(first + k) * n + j];
      if (j < b->first_birth && j >= young_width && young[k * n + j] > LEFT_OUT) young_width = j + 1;
    }
  }
  double *heads = b->heads, next[n];
  for (int day = 0; day < days; day++) {
    double load = total(heads, b->first_head, n) / b->capacity;
    double laying = load > 1 ? 1 / load : 1, over = load > 1 ? load - 1 : 0;
    for (int to = 0; to < n; to++) {
      int most = to + 1 < width ? to + 1 : width;
      double sum = 0;
      for (int d = 0; d < most; d++) sum += shares[to * width + d] * heads[to - d];
      next[to] = sum;
    }
    for (int k = 0; k < bearing; k++)
      for (int j = 0; j < young_width; j++) next[j] += laying * heads[first + k] * young[k * n + j];
    double kept = exp(-b->deaths * over);
    for (int j = 0; j < n; j++) heads[j] = b->egg[j] ? next[j] : next[j] * kept;
  }
  free(columns);
  free(shares);
  free(young);
}

int main(int argc, char **argv) {
  FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
  if (!file) return 1;
  fseek(file, 0, SEEK_END);
  long bytes = ftell(file);
  rewind(file);
  double *input = malloc(bytes);
  if (fread(input, 1, bytes, file) != (size_t)bytes) return 1;
  fclose(file);
  int bins = (int)input[0], days = (int)input[1];
  Bin all[bins];
  double *at = input + 2;
  for (int i = 0; i < bins; i++) {
    Bin *b = &all[i];
    b->n = (int)at[0], b->first_head = (int)at[1], b->capacity = at[2], b->deaths = at[3];
    b->exit = at + 4, b->advance = b->exit + b->n, b->birth = b->advance + b->n, b->egg = b->birth + b->n;
    b->heads = (double *)b->egg + b->n;
    b->q = 1e-9, b->first_birth = b->n;
    for (int j = b->n - 1; j >= 0; j--) {
      if (b->exit[j] > b->q) b->q = b->exit[j];
      if (b->birth[j] > 0) b->first_birth = j;
    }
    at = b->heads + b->n;
  }
  struct timespec start, end;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &start);
  for (int i = 0; i < bins; i++) play(&all[i], days);
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &end);
  for (int i = 0; i < bins; i++) printf("%.17g ", total(all[i].heads, 0, all[i].n));
  printf("%.9f\n", (double)(end.tv_sec - start.tv_sec) + (double)(end.tv_nsec - start.tv_nsec) / 1e9);
  return 0;
}
